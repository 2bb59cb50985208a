// The section to scale with its zones, the curves over it, the temperature below it.
import {area, path, shown, svg, ticks} from './svg.js';
import {QUANTITIES, inUnits, number, unitName, words} from './units.js';

const WINDOWS = [12, 16, 20, 25, 30, 40, 50, 60, 80, 100, 130, 160, 200, 260, 340, 450, 600, 900];
// Share of the picture's height that the plate may take.
const DEEPEST = 0.16;
const SHADE = {fusion: 6, 'partially melted': 5, solutionized: 4, recrystallized: 4, annealed: 3,
  overaged: 2, recovered: 2, base: 0};
const LOOKS = ['before', 'welded', 'treated'];

export function lookOf(state, states) {
  if (state < 2) return LOOKS[state];
  return state === states - 1 ? 'treated' : 'stage';
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

export class Picture {
  constructor(place) {
    this.place = place;
  }

  draw(view) {
    const width = Math.max(300, this.place.clientWidth);
    const narrow = width < 560;
    const height = narrow ? 400 : Math.max(380, this.place.clientHeight || 560);
    this.frame = {
      width, height, narrow,
      left: narrow ? 46 : 66, right: width - (narrow ? 10 : 22),
      big: narrow ? 13 : width > 1000 ? 25 : 17, small: narrow ? 12 : width > 1000 ? 19 : 14,
    };
    const {left, right} = this.frame;
    const {thickness_mm: one, right_thickness_mm: other} = view.result.controls;
    const thin = Math.max(one, other) * (right - left) / (2 * DEEPEST * height);
    const half = reach([view.result, view.pinned && view.pinned.result].filter(Boolean), thin);
    this.x = mm => left + (mm + half) / (2 * half) * (right - left);
    this.half = half;
    this.perMm = (right - left) / (2 * half);
    const root = svg('svg', {viewBox: `0 0 ${width} ${height}`, width, height, role: 'img',
      'aria-label': summary(view)});
    const top = this.section(root, view);
    const bottom = height - (narrow ? 118 : width > 1000 ? 170 : 150);
    this.curves(root, view, top + 14, bottom);
    this.temperatures(root, view, bottom + 20 + this.frame.small, height - 12 - 2 * this.frame.small);
    this.place.replaceChildren(root);
  }

  // Plate, bead and zones at one scale in both directions.
  section(root, view) {
    const {result} = view;
    const {left, small} = this.frame;
    const names = this.zoneNames(root, view, 18);
    const sides = [result.controls.thickness_mm, result.controls.right_thickness_mm];
    const deep = Math.max(...sides) * this.perMm;
    const cap = Math.max(...result.passes.map(p => Math.min(0.3 * p.half_width_mm, 3))) * this.perMm;
    const surface = names + cap + 8;
    const g = svg('g', {class: 'section'});
    const [first, last] = this.ends(result).map(mm => this.clamp(mm));
    [[first, this.x(0), sides[0]], [this.x(0), last, sides[1]]].forEach(([from, to, mm]) => {
      g.append(svg('rect', {class: 'plate', x: shown(from), y: shown(surface),
        width: shown(to - from), height: shown(mm * this.perMm)}));
    });
    for (const zone of result.zones) {
      const [from, to] = [this.clamp(zone.from_mm), this.clamp(zone.to_mm)];
      if (to > from && zone.zone !== 'fusion') {
        const mm = zone.from_mm < 0 ? sides[0] : sides[1];
        g.append(svg('rect', {class: `zone zone-${SHADE[zone.zone]}`, x: shown(from),
          y: shown(surface), width: shown(to - from), height: shown(mm * this.perMm)}));
      }
    }
    g.append(this.bead(result, surface, deep, cap));
    const line = surface + result.traverse_depth_mm * this.perMm;
    g.append(svg('line', {class: 'traverse', x1: first, x2: last, y1: shown(line), y2: shown(line)}));
    root.append(g);
    const note = `${plates(view, sides)}, to scale; numbers along the dotted line`;
    const under = surface + deep + small + 4;
    root.append(svg('text', {class: 'soft', x: left, y: shown(under), 'font-size': small}, note));
    return under + small + 6;
  }

  bead(result, surface, deep, cap) {
    const fusion = result.zones.filter(z => z.zone === 'fusion');
    const inside = fusion.length ? Math.max(...fusion.map(z => Math.max(-z.from_mm, z.to_mm))) : 0;
    const over = Math.max(...result.passes.map(p => p.half_width_mm + Math.abs(p.offset_mm)));
    const depth = result.traverse_depth_mm * this.perMm;
    const root = inside > 0 ? Math.max(0.3 * over, 2 * inside - over) : 0;
    const low = inside > 0 ? deep : Math.min(deep, depth);
    const [a, b] = [over * this.perMm, root * this.perMm];
    const c = this.x(0);
    const text = `M${shown(c - a)} ${shown(surface)}Q${shown(c)} ${shown(surface - 2 * cap)}`
      + ` ${shown(c + a)} ${shown(surface)}L${shown(c + b)} ${shown(surface + low)}`
      + `L${shown(c - b)} ${shown(surface + low)}Z`;
    return svg('path', {class: 'zone-6 bead', d: text});
  }

  clamp(mm) {
    return Math.min(this.frame.right, Math.max(this.frame.left, this.x(mm)));
  }

  // Names over their zones; those without room step up to a second row.
  zoneNames(root, view, y) {
    const spans = [];
    for (const zone of view.result.zones) {
      const last = spans[spans.length - 1];
      if (last && last.zone === zone.zone) last.to = zone.to_mm;
      else spans.push({zone: zone.zone, from: zone.from_mm, to: zone.to_mm});
    }
    const {small, narrow, right} = this.frame;
    const size = narrow ? 11 : small;
    const ends = [-1e9, -1e9, -1e9];
    for (const span of spans) {
      const [from, to] = [this.clamp(span.from), this.clamp(span.to)];
      if (to - from < 1) continue;
      const wide = span.zone.length * size * 0.56;
      const middle = Math.min(right - wide / 2, Math.max(wide / 2, (from + to) / 2));
      if (narrow && span.from < 0 && span.to < 0) continue;
      const row = ends.findIndex(end => middle - wide / 2 > end + 8);
      if (row < 0) continue;
      ends[row] = middle + wide / 2;
      const base = y + 34 - row * 17;
      root.append(svg('text', {class: 'soft', x: shown(middle), y: base, 'font-size': size,
        'text-anchor': 'middle'}, span.zone));
      root.append(svg('line', {class: 'leader', x1: shown((from + to) / 2), x2: shown((from + to) / 2),
        y1: base + 4, y2: y + 44}));
    }
    return y + 44;
  }

  curves(root, view, top, bottom) {
    const quantity = QUANTITIES[view.quantity];
    const {result, units, pinned} = view;
    const {left, right, big, small} = this.frame;
    const values = result[quantity.key];
    const most = highest([values, pinned && pinned.result[quantity.key]]);
    const scale = v => inUnits(v, quantity.unit, units);
    const labels = 2 * (big + 8) + 10;
    const upper = scale(most || 100) / (1 - Math.min(0.4, labels / (bottom - top)));
    const y = v => v === null || v === undefined
      ? null : bottom - scale(v) / upper * (bottom - top);
    this.bands(root, result, top, bottom);
    for (const t of ticks(0, upper, 6)) {
      const at = bottom - t / upper * (bottom - top);
      root.append(svg('line', {class: 'grid', x1: left, x2: right, y1: shown(at), y2: shown(at)}));
      root.append(svg('text', {class: 'tick', x: left - 7, y: shown(at + 5), 'font-size': small,
        'text-anchor': 'end'}, String(t)));
    }
    root.append(svg('text', {class: 'axis', x: left, y: shown(top - 2), 'font-size': small},
      `${quantity.name} (${unitName(quantity.unit, units)})`));
    const clip = svg('clipPath', {id: 'inside'},
      svg('rect', {x: left, y: top, width: right - left, height: bottom - top}));
    const g = svg('g', {'clip-path': 'url(#inside)', class: view.moment ? 'faint' : ''});
    root.append(clip, g);
    const states = result.states.length;
    for (let s = 1; s < states; s++) {
      g.append(svg('path', {class: `band ${lookOf(s, states)}`,
        d: this.band(result, values.low[s], values.high[s], y)}));
    }
    if (pinned) this.pinnedLines(g, pinned.result, quantity.key, y);
    for (let s = 0; s < states; s++) {
      const points = this.points(result, values.middle[s], y);
      g.append(svg('path', {class: `line ${lookOf(s, states)}`, d: path(points)}));
      this.markers(g, points, lookOf(s, states), this.ringAt(result, values.middle[s]));
    }
    if (view.moment) this.momentLine(root, view, quantity, y);
    else this.labels(root, view, values.middle, quantity, y, top, bottom, big);
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

  band(result, low, high, y) {
    const lows = this.points(result, low, y);
    const highs = this.points(result, high, y);
    return area(lows.map(([x]) => x), lows.map(([, at]) => at), highs.map(([, at]) => at));
  }

  bands(root, result, top, bottom) {
    for (const zone of result.zones) {
      const [from, to] = [this.clamp(zone.from_mm), this.clamp(zone.to_mm)];
      if (to > from && zone.zone !== 'base') {
        root.append(svg('rect', {class: `zone zone-${SHADE[zone.zone]}`, x: shown(from),
          y: shown(top), width: shown(to - from), height: shown(bottom - top)}));
      }
    }
  }

  pinnedLines(g, result, key, y) {
    const states = result.states.length;
    for (let s = 1; s < states; s++) {
      const points = this.points(result, result[key].middle[s], y);
      g.append(svg('path', {class: `line pinned ${lookOf(s, states)}`, d: path(points)}));
    }
  }

  // Where the lowest value gets its ring.
  ringAt(result, values) {
    const low = lowest(values, result.distance_mm, this.half);
    return low < 0 ? -1e9 : this.x(result.distance_mm[low]);
  }

  // Marks along a line, none where they would be cut or sit in the ring.
  markers(g, points, look, ring) {
    if (look !== 'welded' && look !== 'treated') return;
    const gap = this.frame.narrow ? 44 : 64;
    let last = this.frame.left - gap / (look === 'welded' ? 1.6 : 1);
    for (const [x, y] of points) {
      const clear = x > this.frame.left + 6 && x < this.frame.right - 6 && Math.abs(x - ring) > 16;
      if (y !== null && x - last >= gap && clear) {
        last = x;
        g.append(look === 'welded'
          ? svg('rect', {class: `marker ${look}`, x: shown(x - 5), y: shown(y - 5), width: 10, height: 10})
          : svg('circle', {class: `marker ${look}`, cx: shown(x), cy: shown(y), r: 5.4}));
      }
    }
  }

  // What each line is and how low it goes, where there is room.
  labels(root, view, middle, quantity, y, top, bottom, size) {
    const {result, units} = view;
    const taken = [];
    const states = result.states.length;
    const unit = unitName(quantity.unit, units);
    for (let s = states - 1; s >= 0; s--) {
      const low = lowest(middle[s], result.distance_mm, this.half);
      if (low < 0) continue;
      const value = number(middle[s][low], quantity.unit, units);
      const even = s === 0;
      const text = `${result.states[s]}: ${even ? '' : 'lowest '}${value} ${unit}`;
      const wide = text.length * size * 0.55;
      const x = even ? this.frame.left + 8 + wide / 2 : this.inside(this.x(0), wide);
      const at = y(middle[s][low]);
      const above = even || (s > 1 && middle[s][low] > 1.15 * least(middle[1]));
      const wanted = above ? y(Math.max(...middle[s])) - 14 : at + size + 12;
      const level = free(taken, x, wide, wanted, {size, top, bottom, above});
      root.append(svg('text', {class: `label ${lookOf(s, states)}`, x: shown(x), y: shown(level),
        'font-size': size, 'text-anchor': 'middle'}, text));
      if (!even) {
        root.append(svg('circle', {class: `ring ${lookOf(s, states)}`,
          cx: shown(this.x(result.distance_mm[low])), cy: shown(at), r: 9}));
      }
    }
    if (view.pinned) {
      root.append(svg('text', {class: 'soft', x: this.frame.right - 6, y: shown(bottom - 8),
        'font-size': this.frame.small, 'text-anchor': 'end'}, 'thin dotted lines: pinned'));
    }
  }

  inside(x, wide) {
    return Math.min(this.frame.right - wide / 2, Math.max(this.frame.left + wide / 2, x));
  }

  momentLine(root, view, quantity, y) {
    const values = view.moment[quantity.key];
    const points = this.points({...view.moment, controls: view.result.controls}, values, y);
    const g = svg('g', {'clip-path': 'url(#inside)'});
    g.append(svg('path', {class: 'line now', d: path(points)}));
    root.append(g);
    const gap = values.some(v => v === null);
    const text = gap ? 'now (no line: molten or melting)' : 'now, if cooled here';
    root.append(svg('text', {class: 'label now', x: this.frame.left + 10, 'font-size': this.frame.big,
      y: shown(y(0) - 12)}, text));
  }

  temperatures(root, view, top, bottom) {
    const {result, units, moment} = view;
    const {left, right, small, narrow} = this.frame;
    const scale = v => inUnits(v, '°C', units);
    const upper = scale(720);
    const y = v => v === null || v > 700 ? null : bottom - Math.max(0, scale(v) / upper) * (bottom - top);
    for (const t of ticks(0, upper, 3)) {
      const at = bottom - t / upper * (bottom - top);
      root.append(svg('line', {class: 'grid', x1: left, x2: right, y1: shown(at), y2: shown(at)}));
      root.append(svg('text', {class: 'tick', x: left - 7, y: shown(at + 5), 'font-size': small,
        'text-anchor': 'end'}, String(t)));
    }
    const peaks = result.distance_mm.map((mm, i) => [this.x(mm), y(result.peak_temperature_C[i])]);
    const clip = svg('clipPath', {id: 'warm'},
      svg('rect', {x: left, y: top - 2, width: right - left, height: bottom - top + 4}));
    const g = svg('g', {'clip-path': 'url(#warm)'});
    g.append(svg('path', {class: 'line peak', d: path(peaks)}));
    if (moment) {
      const now = moment.distance_mm.map((mm, i) => [this.x(mm), y(moment.temperature_C[i])]);
      const heights = now.map(([, at]) => (at === null ? top - 4 : at));
      g.append(svg('path', {class: 'glow', d: area(now.map(([x]) => x), now.map(() => bottom), heights)}));
      g.append(svg('path', {class: 'line warm', d: path(now)}));
    }
    root.append(clip, g);
    const name = moment ? 'temperature now, and the highest of the weld' : 'highest temperature of the weld';
    const edge = Math.max(...result.passes.map(p => p.half_width_mm)) * this.perMm;
    const molten = !moment && Math.max(...result.peak_temperature_C) > 700;
    const fits = edge > 1.9 * small;
    root.append(svg('text', {class: 'axis', x: left, y: shown(top - 8), 'font-size': small},
      `${name} (${unitName('°C', units)})${molten && !fits ? '; gap: molten' : ''}`));
    if (molten && fits) {
      root.append(svg('text', {class: 'soft', x: shown(this.x(0)), y: shown(top + small),
        'font-size': small, 'text-anchor': 'middle'}, 'molten'));
    }
    const end = inUnits(this.half, 'mm', units);
    for (const t of ticks(-end, end, narrow ? 4 : 10)) {
      const at = this.x(t / end * this.half);
      root.append(svg('line', {class: 'grid', x1: shown(at), x2: shown(at), y1: bottom, y2: bottom + 5}));
      root.append(svg('text', {class: 'tick', x: shown(at), y: bottom + 5 + small, 'font-size': small,
        'text-anchor': 'middle'}, String(t).replace('-', '−')));
    }
    root.append(svg('text', {class: 'axis', x: (left + right) / 2, y: bottom + 7 + 2 * small,
      'font-size': small, 'text-anchor': 'middle'},
    `distance from the weld centre (${unitName('mm', units)})`));
  }
}

// The plates by their thickness; a joint that is not flat is laid flat.
function plates(view, [left, right]) {
  const thick = [...new Set([left, right].map(mm => words(mm, 'mm', view.units)))].join(' and ');
  const flat = ['tee', 'lap', 'corner', 'socket'].includes(view.case.joint);
  return `${thick} plate${flat ? ` (${view.case.joint} laid flat)` : ''}`;
}

function least(values) {
  return Math.min(...values.filter(v => v !== null));
}

function highest(lists) {
  let most = 0;
  for (const list of lists.filter(Boolean)) {
    for (const state of [...list.middle, ...list.high.slice(1)]) {
      for (const v of state) if (v !== null && v > most) most = v;
    }
  }
  return most;
}

export function lowest(values, distances, half) {
  let at = -1;
  values.forEach((v, i) => {
    if (v !== null && Math.abs(distances[i]) <= half && (at < 0 || v < values[at])) at = i;
  });
  return at;
}

function free(taken, x, wide, wanted, {size, top, bottom, above}) {
  const clash = level => taken.some(t =>
    Math.abs(t.level - level) < size + 5 && Math.abs(t.x - x) < (t.wide + wide) / 2);
  for (const shift of [0, 1, -1, 2, -2, 3, -3, 4, -4]) {
    const to = above ? -shift : shift;
    const level = Math.min(bottom - 4, Math.max(top + size, wanted + to * (size + 6)));
    if (!clash(level)) {
      taken.push({x, wide, level});
      return level;
    }
  }
  return wanted;
}

export function summary(view) {
  const {result, units} = view;
  const quantity = QUANTITIES[view.quantity];
  const parts = result.states.map((state, s) => {
    const values = result[quantity.key].middle[s];
    const at = lowest(values, result.distance_mm, Infinity);
    return at < 0 ? `${state} not predicted`
      : `${state} lowest ${words(values[at], quantity.unit, units)} at `
        + `${words(Math.abs(result.distance_mm[at]), 'mm', units)} from the centre`;
  });
  return `Section across the weld, ${quantity.name}: ${parts.join('; ')}.`;
}
