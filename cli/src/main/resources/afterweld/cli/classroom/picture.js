// The section to scale with its zones, the curves over it, the temperature below it.
import {boxOf, placeOf} from './labelling.js';
import {named, stretches} from './naming.js';
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
    this.spans = stretches(view.result.zones, mm => this.clamp(mm));
    const top = this.section(root, view);
    const bottom = height - (narrow ? 118 : width > 1000 ? 170 : height < 480 ? 130 : 150);
    this.curves(root, view, top + 14, bottom);
    this.temperatures(root, view, bottom + 20 + this.frame.small, height - 12 - 2 * this.frame.small);
    this.place.replaceChildren(root);
  }

  // Plate, bead and zones at one scale in both directions.
  section(root, view) {
    const {result} = view;
    const names = this.zoneNames(root);
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
    this.boundaries(g, surface, x => surface + sides[x < this.x(0) ? 0 : 1] * this.perMm, false);
    g.append(this.bead(result, surface, sides.map(mm => mm * this.perMm), cap));
    const line = surface + result.traverse_depth_mm * this.perMm;
    g.append(svg('line', {class: 'traverse', x1: first, x2: last, y1: shown(line), y2: shown(line)}));
    root.append(g);
    return this.note(root, [plates(view, sides), 'to scale; numbers along the dotted line'], surface + deep + 4);
  }

  // A note in one line where it fits.
  note(root, parts, top) {
    const {left, width, small} = this.frame;
    const whole = parts.join(', ');
    const lines = whole.length * small * 0.49 < width - left ? [whole] : parts;
    lines.forEach((line, i) => root.append(svg('text', {class: 'soft', x: left,
      y: shown(top + small + i * (small + 3)), 'font-size': small}, line)));
    return top + 2 * small + 6 + (lines.length - 1) * (small + 3);
  }

  // As wide as the passes on the arc side and as the fusion zone along the dotted line, down to
  // the root of each plate.
  bead(result, surface, deeps, cap) {
    const depth = result.traverse_depth_mm * this.perMm;
    const c = this.x(0);
    const [left, right] = [-1, 1].map((side, i) => {
      const melted = result.zones.filter(z => z.zone === 'fusion').map(z => (i ? z.to_mm : -z.from_mm));
      return halfBead(result.passes, Math.max(0, ...melted) * this.perMm, depth, deeps, i, this.perMm)
        .map(([x, y]) => `${shown(c + side * x)} ${shown(surface + y)}`);
    });
    const text = `M${left[0]}Q${shown(c)} ${shown(surface - 2 * cap)} ${right.join('L')}`
      + `L${left.reverse().slice(0, -1).join('L')}Z`;
    return svg('path', {class: 'zone-6 bead', d: text});
  }

  // Thin lines between zones; the outline of the bead is one already.
  boundaries(place, top, bottomAt, roundTheBead) {
    this.spans.slice(1).forEach((span, i) => {
      const bead = [span.zone, this.spans[i].zone].includes('fusion');
      if (bead && !roundTheBead) return;
      place.append(svg('line', {class: 'boundary', x1: shown(span.from), x2: shown(span.from),
        y1: shown(top), y2: shown(bottomAt(span.from))}));
    });
  }

  clamp(mm) {
    return Math.min(this.frame.right, Math.max(this.frame.left, this.x(mm)));
  }

  // Names over their zones; on a narrow picture each name once.
  zoneNames(root) {
    const {small, narrow, width} = this.frame;
    const size = narrow ? 11 : small;
    const centre = this.x(0);
    const spans = narrow ? onceEach(this.spans, centre) : this.spans;
    const names = named(spans, {size, centre, width});
    const rows = Math.max(3, ...names.map(name => name.row + 1));
    const foot = size + 12 + (rows - 1) * (size + 3);
    for (const {text, left, wide, foot: x, row} of names) {
      const base = size + 2 + (rows - 1 - row) * (size + 3);
      root.append(svg('text', {class: 'soft', x: shown(left + wide / 2), y: base, 'font-size': size,
        'text-anchor': 'middle'}, text));
      root.append(svg('line', {class: 'leader', x1: shown(x), x2: shown(x), y1: base + 4, y2: foot}));
    }
    return foot;
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
    const lines = values.middle.map(middle => this.points(result, middle, y));
    g.append(svg('path', {class: 'line before-edge', d: path(lines[0])}));
    for (let s = 0; s < states; s++) {
      const points = lines[s];
      g.append(svg('path', {class: `line ${lookOf(s, states)}`, d: path(points)}));
      this.markers(g, points, lookOf(s, states), this.ringAt(result, values.middle[s]));
    }
    if (view.moment) this.momentLine(root, view, quantity, y);
    else this.labels(root, view, {middle: values.middle, lines, quantity, y}, {top, bottom}, big);
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
    this.boundaries(root, top, () => bottom, true);
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
  labels(root, view, {middle, lines, quantity, y}, room, size) {
    const {result, units} = view;
    const {right, small} = this.frame;
    const taken = {labels: [], lines, rings: this.rings(root, result, middle, y)};
    if (view.pinned) {
      const note = {text: 'thin lines of dots: pinned', level: room.bottom - 8};
      root.append(svg('text', {class: 'soft', x: right - 6, y: shown(note.level), 'font-size': small,
        'text-anchor': 'end'}, note.text));
      const wide = note.text.length * small * 0.5;
      taken.labels.push(boxOf(right - 6 - wide / 2, note.level, {wide, size: small}));
    }
    const unit = unitName(quantity.unit, units);
    for (let s = result.states.length - 1; s >= 0; s--) {
      const low = lowest(middle[s], result.distance_mm, this.half);
      if (low < 0) continue;
      const value = number(middle[s][low], quantity.unit, units);
      const text = `${result.states[s]}: ${s === 0 ? '' : 'lowest '}${value} ${unit}`;
      const wish = this.wish(s, middle, y, text.length * size * 0.53, size);
      const at = placeOf(wish, room, taken);
      taken.labels.push(at.box);
      root.append(svg('text', {class: `label ${lookOf(s, result.states.length)}`, x: shown(at.x),
        y: shown(at.level), 'font-size': size, 'text-anchor': 'middle'}, text));
    }
  }

  // A label of what lies low goes under it, any other over its line.
  wish(s, middle, y, wide, size) {
    const even = s === 0;
    const [left, centre, right] = [-Infinity, this.x(0), Infinity].map(x => this.inside(x, wide + 16));
    const up = even || (s > 1 && least(middle[s]) > 1.15 * least(middle[1]));
    const xs = even ? [left, right, centre] : [centre, left, right];
    const wanted = up ? y(Math.max(...middle[s])) - 14 : y(least(middle[s])) + size + 12;
    return {xs, wanted, up, wide, size};
  }

  // A ring round the lowest place of each line.
  rings(root, result, middle, y) {
    const states = result.states.length;
    return middle.slice(1).flatMap((values, i) => {
      const low = lowest(values, result.distance_mm, this.half);
      if (low < 0) return [];
      const [cx, cy] = [this.x(result.distance_mm[low]), y(values[low])];
      root.append(svg('circle', {class: `ring ${lookOf(i + 1, states)}`, cx: shown(cx), cy: shown(cy), r: 9}));
      return [{left: cx - 11, right: cx + 11, top: cy - 11, bottom: cy + 11}];
    });
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
    const molten = !moment && Math.max(...result.peak_temperature_C) > 700;
    const fits = molten && gapIn(peaks, this.x(0)) > 3.6 * small;
    root.append(svg('text', {class: 'axis', x: left, y: shown(top - 8), 'font-size': small},
      `${name} (${unitName('°C', units)})${molten && !fits ? '; gap: molten' : ''}`));
    if (fits) {
      root.append(svg('text', {class: 'soft', x: shown(this.x(0)), y: shown((top + bottom) / 2 + small),
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

// How wide a line is broken at a place, pixels.
function gapIn(points, centre) {
  const known = points.filter(([, y]) => y !== null).map(([x]) => x);
  return Math.min(...known.filter(x => x > centre)) - Math.max(...known.filter(x => x < centre));
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

// Where a zone lies on both sides, the ones beside the weld are named on the left.
function onceEach(spans, centre) {
  return spans.filter(span => {
    const onLeft = span.to <= centre;
    const twin = spans.some(other => other.zone === span.zone && other.to <= centre !== onLeft);
    return !twin || onLeft === SHADE[span.zone] > 3;
  });
}

// Half of the bead's outline, from the arc side to the root, pixels.
function halfBead(passes, melted, depth, deeps, side, perMm) {
  const over = Math.max(...passes.map(p => p.half_width_mm + Math.abs(p.offset_mm))) * perMm;
  const deep = Math.max(...deeps);
  if (melted === 0) return [[over, 0], [0, Math.min(deeps[side], depth)]];
  const wide = Math.max(over, melted);
  const root = Math.max(0.3 * wide, wide - (wide - melted) * deep / Math.max(depth, 0.1 * deep));
  const at = wide - (wide - root) * deeps[side] / deep;
  return [[wide, 0], [at, deeps[side]], [0, deeps[side]]];
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
