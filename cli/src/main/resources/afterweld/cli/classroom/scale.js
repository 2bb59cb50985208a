// Where millimetres and values lie in the picture, and how large its parts are.
import {stretches} from './naming.js';

const WINDOWS = [12, 16, 20, 25, 30, 40, 50, 60, 80, 100, 130, 160, 200, 260, 340, 450, 600, 900];
// Share of the picture's height that the plate may take.
const DEEPEST = 0.16;

export class Scale {
  constructor(view, width, tall) {
    const narrow = width < 560;
    const wide = width > 1000;
    const height = narrow ? 400 : Math.max(380, tall);
    this.frame = {
      width, height, narrow, wide,
      left: narrow ? 46 : 66, right: width - (narrow ? 10 : 22),
      big: narrow ? 13 : wide ? 25 : 17, small: narrow ? 12 : wide ? 19 : 14,
    };
    const {left, right} = this.frame;
    const {thickness_mm: one, right_thickness_mm: other} = view.result.controls;
    const thin = Math.max(one, other) * (right - left) / (2 * DEEPEST * height);
    this.half = reach([view.result, view.pinned && view.pinned.result].filter(Boolean), thin);
    this.perMm = (right - left) / (2 * this.half);
    this.spans = stretches(view.result.zones, mm => this.clamp(mm));
  }

  x(mm) {
    return this.frame.left + (mm + this.half) * this.perMm;
  }

  clamp(mm) {
    return Math.min(this.frame.right, Math.max(this.frame.left, this.x(mm)));
  }

  // How far the metal goes on either side, mm: to the end of a leg, or beyond the picture.
  ends({controls}) {
    return [-(controls.left_width_mm ?? Infinity), controls.right_width_mm ?? Infinity];
  }

  // A line of values; beyond its ends the base goes on unchanged as far as there is metal.
  points(result, values, y) {
    const distances = result.distance_mm;
    const last = values.length - 1;
    const [from, to] = this.ends(result);
    return [[this.x(Math.min(distances[0], Math.max(from, -this.half))), y(values[0])],
      ...distances.map((mm, i) => [this.x(mm), y(values[i])]),
      [this.x(Math.max(distances[last], Math.min(to, this.half))), y(values[last])]];
  }
}

// Half of what is drawn, mm: a ladder of widths, so that the picture does not swim with every move.
function reach(results, atLeast) {
  let need = 8;
  for (const result of results) {
    for (const zone of result.zones) {
      if (zone.zone !== 'base') need = Math.max(need, Math.abs(zone.from_mm), Math.abs(zone.to_mm));
    }
  }
  const half = Math.max(1.15 * need, atLeast);
  return WINDOWS.find(w => w >= half) || half;
}
