// The highest temperature of the weld, or that of a moment, under the curves.
import {area, path, shown, svg, ticks} from './svg.js';
import {inUnits, unitName} from './units.js';

export function drawTemperatures(root, view, scale, top, bottom) {
  const {result, units, moment} = view;
  const {left, right, small, narrow} = scale.frame;
  const inUnit = v => inUnits(v, '°C', units);
  const upper = inUnit(720);
  const y = v => v === null || v > 700 ? null : bottom - Math.max(0, inUnit(v) / upper) * (bottom - top);
  for (const t of ticks(0, upper, 3)) {
    const at = bottom - t / upper * (bottom - top);
    root.append(svg('line', {class: 'grid', x1: left, x2: right, y1: shown(at), y2: shown(at)}));
    root.append(svg('text', {class: 'tick', x: left - 7, y: shown(at + 5), 'font-size': small,
      'text-anchor': 'end'}, String(t)));
  }
  const peaks = result.distance_mm.map((mm, i) => [scale.x(mm), y(result.peak_temperature_C[i])]);
  const clip = svg('clipPath', {id: 'warm'},
    svg('rect', {x: left, y: top - 2, width: right - left, height: bottom - top + 4}));
  const g = svg('g', {'clip-path': 'url(#warm)'});
  g.append(svg('path', {class: 'line peak', d: path(peaks)}));
  if (moment) {
    const now = moment.distance_mm.map((mm, i) => [scale.x(mm), y(moment.temperature_C[i])]);
    const heights = now.map(([, at]) => (at === null ? top - 4 : at));
    g.append(svg('path', {class: 'glow', d: area(now.map(([x]) => x), now.map(() => bottom), heights)}));
    g.append(svg('path', {class: 'line warm', d: path(now)}));
  }
  root.append(clip, g);
  const name = moment ? 'temperature now, and the highest of the weld' : 'highest temperature of the weld';
  const molten = !moment && Math.max(...result.peak_temperature_C) > 700;
  const fits = molten && gapIn(peaks, scale.x(0)) > 3.6 * small;
  root.append(svg('text', {class: 'axis', x: left, y: shown(top - 8), 'font-size': small},
    `${name} (${unitName('°C', units)})${molten && !fits ? '; gap: molten' : ''}`));
  if (fits) {
    root.append(svg('text', {class: 'soft', x: shown(scale.x(0)), y: shown((top + bottom) / 2 + small),
      'font-size': small, 'text-anchor': 'middle'}, 'molten'));
  }
  const end = inUnits(scale.half, 'mm', units);
  for (const t of ticks(-end, end, narrow ? 4 : 10)) {
    const at = scale.x(t / end * scale.half);
    root.append(svg('line', {class: 'grid', x1: shown(at), x2: shown(at), y1: bottom, y2: bottom + 5}));
    root.append(svg('text', {class: 'tick', x: shown(at), y: bottom + 5 + small, 'font-size': small,
      'text-anchor': 'middle'}, String(t).replace('-', '−')));
  }
  root.append(svg('text', {class: 'axis', x: (left + right) / 2, y: bottom + 7 + 2 * small,
    'font-size': small, 'text-anchor': 'middle'},
  `distance from the weld centre (${unitName('mm', units)})`));
}

// How wide a line is broken at a place, pixels.
function gapIn(points, centre) {
  const known = points.filter(([, y]) => y !== null).map(([x]) => x);
  return Math.min(...known.filter(x => x > centre)) - Math.max(...known.filter(x => x < centre));
}
