// Time as a control: the frames of the weld and of the furnace, one after the other.
import {duration, words} from './units.js';

// Where motion is not wanted, a slow row of stills.
const STILLS = matchMedia('(prefers-reduced-motion: reduce)');
const FRAME_MS = 70;
const STILL_MS = 900;
const STILL_FRAMES = 6;
const MOLTEN = 655;

export class Replay {
  constructor(parts, load, show) {
    Object.assign(this, parts);
    this.load = load;
    this.show = show;
    this.frames = [];
    this.at = 0;
    this.timer = null;
    this.asked = 0;
    this.play.addEventListener('click', () => (this.timer ? this.pause() : this.start()));
    this.back.addEventListener('click', () => this.stepBy(-1));
    this.forth.addEventListener('click', () => this.stepBy(1));
    this.leave.addEventListener('click', () => this.forget());
    this.scrub.addEventListener('input', () => this.scrubbed());
  }

  get active() {
    return this.frames.length > 0;
  }

  async fetched() {
    if (this.active) return true;
    const asked = ++this.asked;
    const data = await this.load();
    if (!data || asked !== this.asked) return this.active;
    this.data = data;
    this.frames = data.phases.flatMap((phase, p) => phase.time_s.map((time, i) => ({p, i})));
    this.scrub.max = this.frames.length - 1;
    this.leave.hidden = false;
    return true;
  }

  async start() {
    if (!(await this.fetched())) return;
    if (this.at >= this.frames.length - 1) this.at = 0;
    clearInterval(this.timer);
    this.said('Pause');
    this.timer = setInterval(() => this.tick(), STILLS.matches ? STILL_MS : FRAME_MS);
    this.render();
  }

  tick() {
    if (this.at >= this.frames.length - 1) this.pause();
    else {
      const on = this.at + (STILLS.matches ? STILL_FRAMES : 1);
      this.at = Math.min(on, this.frames.length - 1);
      this.render();
    }
  }

  pause() {
    if (this.timer) this.tell(this.moment.textContent);
    clearInterval(this.timer);
    this.timer = null;
    this.said('Play');
  }

  said(word) {
    this.play.textContent = word;
    this.play.setAttribute('aria-label', word);
  }

  async stepBy(change) {
    this.pause();
    if (!(await this.fetched())) return;
    this.at = Math.min(this.frames.length - 1, Math.max(0, this.at + change));
    this.render();
    this.tell(this.moment.textContent);
  }

  async scrubbed() {
    this.pause();
    const share = Number(this.scrub.value) / Number(this.scrub.max);
    const fresh = !this.active;
    if (!(await this.fetched())) return;
    this.at = fresh ? Math.round(share * (this.frames.length - 1)) : Number(this.scrub.value);
    this.render();
  }

  // The picture goes back to the settled result.
  forget() {
    const was = this.active;
    this.asked++;
    this.pause();
    this.frames = [];
    this.data = null;
    this.at = 0;
    this.scrub.value = 0;
    this.moment.textContent = '';
    this.leave.hidden = true;
    if (was) this.show(null);
  }

  render() {
    const {p, i} = this.frames[this.at];
    const phase = this.data.phases[p];
    const text = this.words(phase, i);
    this.scrub.value = this.at;
    this.scrub.setAttribute('aria-valuetext', text);
    this.moment.textContent = text;
    this.show({
      distance_mm: this.data.distance_mm,
      temperature_C: phase.temperature_C[i],
      hardness_HV: phase.hardness_HV[i],
      yield_MPa: phase.yield_MPa[i],
      tensile_MPa: phase.tensile_MPa[i],
    });
  }

  unitsChanged() {
    if (this.active) this.render();
  }

  words(phase, i) {
    const time = phase.time_s[i];
    const most = Math.max(...phase.temperature_C[i]);
    const hottest = most > MOLTEN ? 'the middle is molten' : `hottest ${words(most, '°C', this.units())}`;
    const clock = duration(Math.abs(time) / 3600);
    if (!phase.arc) return `${phase.name}, ${clock}, ${hottest}`;
    return `${phase.name}, ${clock} ${time < 0 ? 'before' : 'after'} the arc, ${hottest}`;
  }
}
