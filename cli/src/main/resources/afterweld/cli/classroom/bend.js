// The strip across the weld in a bend: it kinks where it is soft, or bends evenly.
import {LOOKS} from './picture.js';
import {path, shown, svg} from './svg.js';
import {rounded, words} from './units.js';

const PAD = 14;

export function drawBend(place, bend, states, thickness, units) {
  const shapes = bend.states
    .map((state, s) => ({...state, look: LOOKS[s], name: states[s]}))
    .filter(state => state.shape_mm);
  if (!shapes.length) {
    place.replaceChildren();
    return bend.states[0].problem;
  }
  const turned = shapes.map(shape => ({...shape, points: upright(shape.shape_mm)}));
  const all = turned.flatMap(shape => shape.points);
  const [low, high] = [0, 1].map(axis => [
    Math.min(...all.map(point => point[axis])), Math.max(...all.map(point => point[axis]))]);
  const width = Math.max(220, place.clientWidth);
  const rows = turned.length;
  const scale = Math.min((width - 2 * PAD) / (low[1] - low[0]), 150 / Math.max(20, high[1] - high[0]));
  const tall = (high[1] - high[0]) * scale + 2 * PAD;
  const root = svg('svg', {viewBox: `0 0 ${width} ${shown(tall + rows * 20)}`, width,
    height: shown(tall + rows * 20), role: 'img', 'aria-label': spoken(turned, bend, units)});
  const x = mm => width / 2 + (mm - (low[0] + low[1]) / 2) * scale;
  const y = mm => PAD + (mm - high[0]) * scale;
  for (const shape of turned) {
    const d = path(shape.points.map(([a, b]) => [x(a), y(b)]));
    const thick = shape.look === 'before' ? Math.max(5, thickness * scale) + 5 : Math.max(3, thickness * scale * 0.7);
    if (shape.look === 'before') root.append(svg('path', {class: 'strip before-edge', d, 'stroke-width': shown(thick + 3)}));
    root.append(svg('path', {class: `strip ${shape.look}`, d, 'stroke-width': shown(thick)}));
  }
  turned.forEach((shape, i) => {
    const level = tall + 14 + i * 20;
    const sample = {x1: PAD, x2: PAD + 26, y1: level - 5, y2: level - 5};
    if (shape.look === 'before') root.append(svg('line', {class: 'strip before-edge', ...sample, 'stroke-width': 8}));
    root.append(svg('line', {class: `strip ${shape.look}`, ...sample, 'stroke-width': 5}));
    root.append(svg('text', {class: `label ${shape.look}`, x: PAD + 34, y: level, 'font-size': 15},
      `${shape.name}: ${rounded(shape.kink_factor, 1)} × mean`));
  });
  place.replaceChildren(root);
  return `${sentence(turned, bend, units)} ${unbent(bend, states)}`.trim();
}

// Both ends at one height, the bend upwards.
function upright(points) {
  const [a, b] = [points[0], points[points.length - 1]];
  const tilt = Math.atan2(b[1] - a[1], b[0] - a[0]);
  const [c, s] = [Math.cos(-tilt), Math.sin(-tilt)];
  const turned = points.map(([px, py]) => [px * c - py * s, px * s + py * c]);
  const end = turned[0][1];
  return turned.map(([px, py]) => [px, py - end]).map(([px, py]) => [px, -Math.abs(py)]);
}

function spoken(shapes, bend, units) {
  return `Strip bent by ${rounded(bend.angle_deg, 0)} degrees. ${sentence(shapes, bend, units)}`;
}

function sentence(shapes, bend, units) {
  const welded = shapes.find(shape => shape.look === 'welded');
  const last = shapes[shapes.length - 1];
  const told = [welded, last.look === 'treated' ? last : null].filter(Boolean);
  return told.map(shape => judged(shape, units)).join(' ');
}

function sentenceCase(text) {
  return text[0].toUpperCase() + text.slice(1);
}

// States whose strip cannot be bent, and why.
function unbent(bend, states) {
  return bend.states
    .map((state, s) => (state.problem ? `${sentenceCase(states[s])}: ${state.problem}` : ''))
    .filter(text => text)
    .join(' ');
}

function judged(shape, units) {
  const name = sentenceCase(shape.name);
  if (shape.kink_factor < 1.3) return `${name} it bends evenly.`;
  const how = shape.kink_factor < 3 ? 'bends most sharply' : 'kinks';
  return `${name} it ${how} ${words(shape.sharpest_mm, 'mm', units)} from the weld centre.`;
}
