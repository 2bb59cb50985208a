// The section to scale with its zones, the curves over it, the temperature below it.
import {boxOf, placeOf} from './labelling.js';
import {Scale} from './scale.js';
import {SHADE, boundaries, drawSection} from './section.js';
import {area, path, shown, svg, ticks} from './svg.js';
import {drawTemperatures} from './temperatures.js';
import {QUANTITIES, inUnits, number, unitName, words} from './units.js';

// How the states are drawn, in their order.
export const LOOKS = ['before', 'welded', 'treated'];

export class Picture {
  constructor(place) {
    this.place = place;
  }

  draw(view) {
    const scale = new Scale(view, Math.max(300, this.place.clientWidth), this.place.clientHeight || 560);
    this.scale = scale;
    const {width, height, narrow, wide, small} = scale.frame;
    const root = svg('svg', {viewBox: `0 0 ${width} ${height}`, width, height, role: 'img',
      'aria-label': summary(view)});
    const top = drawSection(root, view, scale);
    const bottom = height - (narrow ? 118 : wide ? 170 : height < 480 ? 130 : 150);
    this.curves(root, view, top + 14, bottom);
    drawTemperatures(root, view, scale, bottom + 20 + small, height - 12 - 2 * small);
    this.place.replaceChildren(root);
  }

  curves(root, view, top, bottom) {
    const quantity = QUANTITIES[view.quantity];
    const {result, units, pinned} = view;
    const {left, right, big, small} = this.scale.frame;
    const values = result[quantity.key];
    const most = highest([values, pinned && pinned.result[quantity.key]]);
    const inUnit = v => inUnits(v, quantity.unit, units);
    const labels = 2 * (big + 8) + 10;
    const upper = inUnit(most || 100) / (1 - Math.min(0.4, labels / (bottom - top)));
    const y = v => v === null || v === undefined
      ? null : bottom - inUnit(v) / upper * (bottom - top);
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
      g.append(svg('path', {class: `band ${LOOKS[s]}`,
        d: this.band(result, values.low[s], values.high[s], y)}));
    }
    if (pinned) this.pinnedLines(g, pinned.result, quantity.key, y);
    const lines = values.middle.map(middle => this.scale.points(result, middle, y));
    g.append(svg('path', {class: 'line before-edge', d: path(lines[0])}));
    for (let s = 0; s < states; s++) {
      const points = lines[s];
      g.append(svg('path', {class: `line ${LOOKS[s]}`, d: path(points)}));
      this.markers(g, points, LOOKS[s], this.ringAt(result, values.middle[s]));
    }
    if (view.moment) this.momentLine(root, view, quantity, y);
    else this.labels(root, view, {middle: values.middle, lines, quantity, y}, {top, bottom}, big);
  }

  band(result, low, high, y) {
    const lows = this.scale.points(result, low, y);
    const highs = this.scale.points(result, high, y);
    return area(lows.map(([x]) => x), lows.map(([, at]) => at), highs.map(([, at]) => at));
  }

  bands(root, result, top, bottom) {
    for (const zone of result.zones) {
      const [from, to] = [this.scale.clamp(zone.from_mm), this.scale.clamp(zone.to_mm)];
      if (to > from && zone.zone !== 'base') {
        root.append(svg('rect', {class: `zone zone-${SHADE[zone.zone]}`, x: shown(from),
          y: shown(top), width: shown(to - from), height: shown(bottom - top)}));
      }
    }
    boundaries(root, this.scale, top, () => bottom, true);
  }

  pinnedLines(g, result, key, y) {
    const states = result.states.length;
    for (let s = 1; s < states; s++) {
      const points = this.scale.points(result, result[key].middle[s], y);
      g.append(svg('path', {class: `line pinned ${LOOKS[s]}`, d: path(points)}));
    }
  }

  // Where the lowest value gets its ring.
  ringAt(result, values) {
    const low = lowest(values, result.distance_mm, this.scale.half);
    return low < 0 ? -1e9 : this.scale.x(result.distance_mm[low]);
  }

  // Marks along a line, none where they would be cut or sit in the ring.
  markers(g, points, look, ring) {
    if (look !== 'welded' && look !== 'treated') return;
    const gap = this.scale.frame.narrow ? 44 : 64;
    let last = this.scale.frame.left - gap / (look === 'welded' ? 1.6 : 1);
    for (const [x, y] of points) {
      const clear = x > this.scale.frame.left + 6 && x < this.scale.frame.right - 6 && Math.abs(x - ring) > 16;
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
    const {right, small} = this.scale.frame;
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
      const low = lowest(middle[s], result.distance_mm, this.scale.half);
      if (low < 0) continue;
      const value = number(middle[s][low], quantity.unit, units);
      const text = `${result.states[s]}: ${s === 0 ? '' : 'lowest '}${value} ${unit}`;
      const wish = this.wish(s, middle, y, text.length * size * 0.53, size);
      const at = placeOf(wish, room, taken);
      taken.labels.push(at.box);
      root.append(svg('text', {class: `label ${LOOKS[s]}`, x: shown(at.x),
        y: shown(at.level), 'font-size': size, 'text-anchor': 'middle'}, text));
    }
  }

  // A label of what lies low goes under it, any other over its line.
  wish(s, middle, y, wide, size) {
    const even = s === 0;
    const [left, centre, right] = [-Infinity, this.scale.x(0), Infinity].map(x => this.inside(x, wide + 16));
    const up = even || (s > 1 && least(middle[s]) > 1.15 * least(middle[1]));
    const xs = even ? [left, right, centre] : [centre, left, right];
    const wanted = up ? y(Math.max(...middle[s])) - 14 : y(least(middle[s])) + size + 12;
    return {xs, wanted, up, wide, size};
  }

  // A ring round the lowest place of each line.
  rings(root, result, middle, y) {
    return middle.slice(1).flatMap((values, i) => {
      const low = lowest(values, result.distance_mm, this.scale.half);
      if (low < 0) return [];
      const [cx, cy] = [this.scale.x(result.distance_mm[low]), y(values[low])];
      root.append(svg('circle', {class: `ring ${LOOKS[i + 1]}`, cx: shown(cx), cy: shown(cy), r: 9}));
      return [{left: cx - 11, right: cx + 11, top: cy - 11, bottom: cy + 11}];
    });
  }

  inside(x, wide) {
    return Math.min(this.scale.frame.right - wide / 2, Math.max(this.scale.frame.left + wide / 2, x));
  }

  momentLine(root, view, quantity, y) {
    const values = view.moment[quantity.key];
    const points = this.scale.points({...view.moment, controls: view.result.controls}, values, y);
    const g = svg('g', {'clip-path': 'url(#inside)'});
    g.append(svg('path', {class: 'line now', d: path(points)}));
    root.append(g);
    const gap = values.some(v => v === null);
    const text = gap ? 'now (no line: molten or melting)' : 'now, if cooled here';
    root.append(svg('text', {class: 'label now', x: this.scale.frame.left + 10, 'font-size': this.scale.frame.big,
      y: shown(y(0) - 12)}, text));
  }

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

function lowest(values, distances, half) {
  let at = -1;
  values.forEach((v, i) => {
    if (v !== null && Math.abs(distances[i]) <= half && (at < 0 || v < values[at])) at = i;
  });
  return at;
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
