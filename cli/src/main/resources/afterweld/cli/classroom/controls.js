// The controls beside the picture: each writes one value of the case, with its unit.
import {freeBead, put, step, treatment, withTreatment} from './case.js';
import {html} from './svg.js';
import {duration, hoursIn, inUnits, metricIn, rounded, unitName} from './units.js';

const HOURS = [0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8, 8.5, 9,
  9.5, 10, 11, 12, 14, 16, 18, 20, 24, 30, 36, 48, 72, 96];
const SOAKS = [0.1, 0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 6, 8, 10, 12];
const RESTS = [0.25, 0.5, 1, 2, 4, 8, 12, 24, 48, 72, 120, 168, 240, 336, 480, 720, 1440, 2160,
  4320, 8760];

// metric and us: from, to, step in the unit of the slider; digits behind the point.
const SLIDERS = [
  {id: 'thickness', label: 'thickness', value: 'thickness_mm', unit: 'mm', keys: ['left', 'thickness'],
    metric: [1, 12, 0.5, 1], us: [0.04, 0.5, 0.02, 2]},
  {id: 'current', label: 'current', value: 'current_A', unit: 'A', keys: ['passes', 0, 'current'],
    metric: [40, 320, 5, 0], us: [40, 320, 5, 0]},
  {id: 'speed', label: 'travel speed', value: 'travel_speed_mm_s', unit: 'mm/s',
    keys: ['passes', 0, 'travel_speed'], metric: [1, 12, 0.1, 1], us: [2, 28, 0.5, 1]},
  {id: 'preheat', label: 'preheat', value: 'preheat_C', unit: '°C', keys: ['passes', 0, 'preheat'],
    metric: [20, 250, 5, 0], us: [70, 480, 10, 0]},
  {id: 'dilution', label: 'dilution', value: 'dilution_percent', unit: '%',
    keys: ['filler', 'dilution'], metric: [0, 100, 5, 0], us: [0, 100, 5, 0]},
  {id: 'rest', label: 'natural ageing after welding', value: 'natural_age_h', hours: RESTS,
    keys: ['natural_age'], after: true},
  {id: 'solution', label: 'solution temperature', value: 'solution_C', unit: '°C',
    step: ['solution_treat', 'temperature'], metric: [460, 560, 5, 0], us: [860, 1040, 5, 0], after: true},
  {id: 'soak', label: 'soak', value: 'soak_h', hours: SOAKS, step: ['solution_treat', 'soak'], after: true},
  {id: 'age', label: 'ageing temperature', value: 'age_C', unit: '°C', step: ['age', 'temperature'],
    metric: [100, 255, 5, 0], us: [210, 490, 5, 0], after: true},
  {id: 'age-time', label: 'ageing time', value: 'age_h', hours: HOURS, step: ['age', 'time'], after: true},
];

const TREATMENTS = [
  ['none', 'none'],
  ['age', 'age only'],
  ['full', 'solution treat, quench, age'],
];

export class Controls {
  constructor(form, library, changed) {
    this.form = form;
    this.library = library;
    this.changed = changed;
    this.units = 'metric';
    this.values = {};
    this.outputs = {};
    this.inputs = {};
    this.legends = [];
    form.addEventListener('submit', event => event.preventDefault());
    this.build();
  }

  build() {
    const weld = this.group('Weld');
    this.select(weld, 'alloy', 'alloy', this.library.alloys.map(a => [a.name, a.name]),
      (tree, name) => this.chooseAlloy(tree, name));
    this.select(weld, 'temper', 'temper', [], (tree, name) => this.sides(tree, 'temper', name));
    for (const slider of SLIDERS.slice(0, 4)) this.slider(weld, slider);
    const metal = this.group('Weld metal');
    const fillers = ['none', ...this.library.fillers].map(name => [name, name]);
    this.select(metal, 'filler', 'filler', fillers, (tree, name) => this.chooseFiller(tree, name));
    this.slider(metal, SLIDERS[4]);
    const after = this.group('After the weld');
    this.slider(after, SLIDERS[5]);
    this.select(after, 'treatment', 'heat treatment', TREATMENTS,
      (tree, kind) => withTreatment(tree, kind, this.schedule(tree)));
    for (const slider of SLIDERS.slice(6)) this.slider(after, slider);
  }

  group(name) {
    const legend = html('legend', {}, name);
    const set = html('fieldset', {}, legend);
    this.legends.push(legend);
    this.form.append(set);
    return set;
  }

  select(into, id, label, options, write) {
    const field = html('select', {id, name: id});
    fill(field, options);
    into.append(html('div', {class: 'control', id: `${id}-row`}, html('label', {for: id}, label), field));
    field.addEventListener('change', () => this.changed(tree => write(tree, field.value), id));
    this.inputs[id] = field;
  }

  slider(into, slider) {
    const id = slider.id;
    const input = html('input', {type: 'range', id, name: id});
    const output = html('output', {for: id, id: `${id}-text`, 'aria-live': 'off'});
    into.append(html('div', {class: 'control', id: `${id}-row`},
      html('label', {for: id}, slider.label), output, input));
    input.addEventListener('input', () => {
      const text = this.text(slider, Number(input.value));
      this.say(slider, text);
      this.changed(tree => this.write(slider, tree, text), id);
    });
    this.inputs[id] = input;
    this.outputs[id] = output;
  }

  // What a case file would say for the slider's place.
  text(slider, place) {
    if (slider.hours) return duration(slider.hours[place]);
    const digits = slider[this.units][3];
    return `${rounded(place, digits)} ${unitName(slider.unit, this.units)}`;
  }

  say(slider, text) {
    this.outputs[slider.id].textContent = text;
    this.inputs[slider.id].setAttribute('aria-valuetext', text);
  }

  write(slider, tree, text) {
    if (slider.id === 'thickness') this.sides(tree, 'thickness', text);
    else if (slider.step) put(step(tree, slider.step[0]), [slider.step[1]], text);
    else put(tree, slider.keys, text);
    if (slider.id === 'dilution') forgetAreas(tree.filler);
    if (!slider.after && slider.id !== 'dilution') freeBead(tree, this.passes);
  }

  sides(tree, key, text) {
    tree.left[key] = text;
    if (tree.right && key in tree.right && tree.right.alloy === undefined) tree.right[key] = text;
  }

  chooseAlloy(tree, name) {
    const alloy = this.library.alloys.find(a => a.name === name);
    const kind = treatment(tree);
    tree.left = {...tree.left, alloy: name};
    delete tree.left.composition;
    if (!alloy.tempers.includes(tree.left.temper)) {
      tree.left.temper = alloy.tempers.includes('T6') ? 'T6' : alloy.tempers[0];
    }
    if (!alloy.schedule) withTreatment(tree, 'none');
    else if (kind === 'age' || kind === 'full') withTreatment(tree, kind, alloy.schedule);
    freeBead(tree, this.passes);
  }

  chooseFiller(tree, name) {
    if (name === 'none') tree.filler = 'none';
    else {
      const known = typeof tree.filler === 'object' ? tree.filler : {};
      const share = `${rounded(this.values.dilution_percent ?? 40, 0)} %`;
      tree.filler = {...known, alloy: name};
      if (!('melted_area' in known)) tree.filler.dilution = known.dilution ?? share;
    }
  }

  schedule(tree) {
    const alloy = this.library.alloys.find(a => a.name === tree.left.alloy);
    return alloy && alloy.schedule;
  }

  // Moves everything to where the case stands; the values may be those of the case before.
  show(tree, computed, passes, units) {
    const values = this.standing(tree, computed);
    this.units = units;
    this.values = values;
    this.passes = passes;
    const alloy = this.library.alloys.find(a => a.name === values.alloy);
    this.legends[0].textContent = whose(tree);
    this.inputs.alloy.value = values.alloy;
    fill(this.inputs.temper, (alloy ? alloy.tempers : [values.temper]).map(t => [t, t]));
    this.inputs.temper.value = values.temper;
    this.inputs.filler.value = values.filler;
    this.showTreatment(tree, Boolean(alloy && alloy.schedule));
    for (const slider of SLIDERS) this.place(slider, values[slider.value]);
    this.hide('dilution', values.filler === 'none');
  }

  // What the case says as the controls write it; anything else as it was computed.
  standing(tree, computed) {
    const values = {...computed};
    for (const slider of SLIDERS) values[slider.value] = said(slider, tree) ?? values[slider.value];
    const alloy = this.library.alloys.find(a => a.name === tree.left.alloy);
    values.alloy = alloy ? alloy.name : values.alloy;
    if (alloy && alloy.tempers.includes(tree.left.temper)) values.temper = tree.left.temper;
    const filler = tree.filler && (tree.filler.alloy || tree.filler);
    if (filler === 'none' || this.library.fillers.includes(filler)) values.filler = filler;
    return values;
  }

  showTreatment(tree, treatable) {
    const kind = treatment(tree);
    const options = treatable ? [...TREATMENTS] : TREATMENTS.slice(0, 1);
    if (kind === 'other' || !options.some(([name]) => name === kind)) {
      options.push([kind, 'as in the file']);
    }
    fill(this.inputs.treatment, options);
    this.inputs.treatment.value = kind;
    for (const id of ['solution', 'soak']) this.hide(id, !step(tree, 'solution_treat'));
    for (const id of ['age', 'age-time']) this.hide(id, !step(tree, 'age'));
  }

  hide(id, hidden) {
    document.getElementById(`${id}-row`).hidden = hidden;
  }

  place(slider, value) {
    if (value === undefined) return;
    const input = this.inputs[slider.id];
    if (slider.hours) {
      setRange(input, 0, slider.hours.length - 1, 1, nearest(slider.hours, value));
      this.say(slider, duration(value));
    } else {
      const [from, to, by, digits] = slider[this.units];
      const there = inUnits(value, slider.unit, this.units);
      setRange(input, from, to, by, there);
      this.say(slider, `${rounded(there, digits)} ${unitName(slider.unit, this.units)}`);
    }
  }
}

function said(slider, tree) {
  const [from, keys] = slider.step ? [step(tree, slider.step[0]), slider.step.slice(1)] : [tree, slider.keys];
  const text = keys.reduce((at, key) => at?.[key], from);
  return slider.hours ? hoursIn(text) : metricIn(text, slider.unit);
}

// A dilution that is set takes the place of one that was measured.
function forgetAreas(filler) {
  delete filler.melted_area;
  delete filler.deposit_area;
}

// What the controls of the weld belong to, where there is more than one of it.
function whose(tree) {
  const left = tree.right && tree.right.alloy !== undefined ? ', left side' : '';
  const passes = (tree.passes || []).length;
  return `Weld${left}${passes > 1 ? `, pass 1 of ${passes}` : ''}`;
}

function fill(field, options) {
  const chosen = field.value;
  field.replaceChildren(...options.map(([value, text]) => html('option', {value}, text)));
  field.value = chosen;
}

function setRange(input, from, to, by, value) {
  input.min = from;
  input.max = to;
  input.step = by;
  if (document.activeElement !== input || Math.abs(Number(input.value) - value) > by) {
    input.value = value;
  }
}

function nearest(list, value) {
  let best = 0;
  list.forEach((one, i) => {
    if (Math.abs(Math.log(one / value)) < Math.abs(Math.log(list[best] / value))) best = i;
  });
  return best;
}
