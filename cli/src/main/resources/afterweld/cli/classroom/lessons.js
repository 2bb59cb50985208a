// Six questions: predict first, then see what the simulator says, then what to notice.
import {arrange} from './arranging.js';
import {Asker} from './asking.js';
import {merged} from './case.js';
import {html} from './svg.js';
import {number, unitName} from './units.js';

export class Lessons {
  constructor(list, place, data, page) {
    this.main = place.closest('main');
    this.list = list;
    this.place = place;
    this.data = data;
    this.page = page;
    this.asker = new Asker('lesson');
    data.lessons.forEach((lesson, i) => {
      const button = html('button', {type: 'button'}, String(i + 1),
        html('span', {}, lesson.title));
      button.addEventListener('click', () => this.open(i));
      list.append(html('li', {}, button));
    });
  }

  open(index) {
    this.index = index;
    this.lesson = this.data.lessons[index];
    this.page.begin(this.caseOf(0), this.lesson);
    this.mark();
    this.ask();
    this.place.hidden = false;
    this.place.focus({preventScroll: false});
  }

  // Back to where the reader came from.
  close() {
    const button = this.list.querySelectorAll('button')[this.index];
    this.leave();
    button.focus();
  }

  leave() {
    if (!this.lesson) return;
    this.asker.next();
    this.lesson = null;
    this.index = -1;
    this.place.hidden = true;
    this.hold('');
    this.mark();
    this.page.ended();
  }

  // While a class predicts how the strip bends, the strip is not shown; then it stands first.
  hold(moment) {
    const about = Boolean(this.lesson && this.lesson.strip);
    this.main.classList.toggle('predicting', about && moment === 'predicting');
    this.main.classList.toggle('bent', about && moment === 'seen');
    arrange(this.main);
  }

  mark() {
    [...this.list.querySelectorAll('button')].forEach((button, i) => {
      if (i === this.index) button.setAttribute('aria-current', 'step');
      else button.removeAttribute('aria-current');
    });
  }

  caseOf(look) {
    return merged(this.data.start, this.lesson.looks[look].case);
  }

  // A look in the reader's units.
  labelOf(look) {
    return this.page.units() === 'us' && look.us ? look.us : look.label;
  }

  // What is shown already follows the units too.
  unitsChanged() {
    if (this.lesson && this.tell) this.tell();
  }

  head() {
    const close = html('button', {type: 'button', class: 'close', 'aria-label': 'Close the lesson'}, '×');
    close.addEventListener('click', () => this.close());
    return html('div', {class: 'lesson-head'},
      html('h2', {}, `${this.index + 1}. ${this.lesson.title}`), close);
  }

  ask() {
    this.asker.next();
    this.tell = null;
    this.hold('predicting');
    const see = html('button', {type: 'button', class: 'strong', id: 'see', disabled: true}, 'See what happens');
    const options = this.lesson.options.map((text, i) => {
      const input = html('input', {type: 'radio', name: 'guess', value: i});
      input.addEventListener('change', () => {
        this.guess = i;
        see.disabled = false;
      });
      return html('label', {class: 'guess'}, input, html('span', {}, text));
    });
    see.addEventListener('click', () => this.reveal());
    this.place.replaceChildren(this.head(), html('p', {class: 'question'}, this.lesson.question),
      html('fieldset', {}, html('legend', {}, 'Your prediction'), ...options), see);
  }

  // What is pinned is the lesson's own first look, whatever was moved while the class predicted.
  async reveal() {
    const {lesson, guess} = this;
    this.hold('seen');
    const right = guess === lesson.answer;
    const verdict = right ? 'As you predicted.' : `You predicted: ${lesson.options[guess]}`;
    const table = html('div', {class: 'wide'}, 'Computing …');
    const looks = html('div', {class: 'looks'}, ...this.lookButtons());
    const heading = html('h3', {tabindex: '-1'}, lesson.options[lesson.answer]);
    this.place.replaceChildren(this.head(), html('p', {class: 'question'}, lesson.question),
      html('p', {class: 'verdict'}, verdict), heading, table, html('p', {}, 'On the picture:'), looks,
      html('h3', {}, 'What to notice'), html('ul', {}, ...lesson.notice.map(t => html('li', {}, t))));
    heading.focus({preventScroll: true});
    const results = [];
    const change = this.asker.next();
    try {
      for (let i = 0; i < lesson.looks.length; i++) {
        results.push(await this.asker.ask(change, 'settled', this.caseOf(i)));
        if (!this.asker.current(change)) return;
        if (i === 0) this.page.compare({result: results[0], case: this.caseOf(0)}, this.caseOf(1));
      }
    } catch {
      if (this.asker.current(change)) table.textContent = 'The numbers could not be computed.';
      return;
    }
    this.tell = () => {
      table.replaceChildren(this.table(lesson, results));
      looks.replaceChildren(...this.lookButtons());
    };
    this.tell();
  }

  lookButtons() {
    return this.lesson.looks.map((look, i) => {
      const button = html('button', {type: 'button'}, this.labelOf(look));
      button.addEventListener('click', () => this.page.look(this.caseOf(i)));
      return button;
    });
  }

  table(lesson, results) {
    const units = this.page.units();
    const heads = ['', ...lesson.looks.map(look => this.labelOf(look))];
    const rows = lesson.measures.map(measure => html('tr', {'data-key': measure.key},
      html('th', {scope: 'row'}, named(measure, units)),
      ...results.map(result => html('td', {}, read(result, measure, units)))));
    return html('table', {}, html('caption', {class: 'unseen'}, 'Computed'),
      html('thead', {}, html('tr', {}, ...heads.map(head => html('th', {scope: 'col'}, head)))),
      html('tbody', {}, ...rows));
  }
}

function named(measure, units) {
  return measure.unit ? `${measure.name} (${unitName(measure.unit, units)})` : measure.name;
}

// A number of the result's table, or the sharpness of the bend in its last state.
function read(result, measure, units) {
  if (measure.key === 'kink') {
    const states = result.bend.states;
    const value = states[states.length - 1].kink_factor;
    return value === undefined ? '–' : value.toFixed(1);
  }
  const row = result.numbers.find(one => one.key === measure.key);
  return row ? number(row.value, row.unit, units) : '–';
}
