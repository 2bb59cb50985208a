// The plate, the bead and the zones at one scale in both directions, with their names.
import {named} from './naming.js';
import {shown, svg} from './svg.js';
import {words} from './units.js';

export const SHADE = {fusion: 6, 'partially melted': 5, solutionized: 4, recrystallized: 4, annealed: 3,
  overaged: 2, recovered: 2, base: 0};

// Draws it and returns where it ends below.
export function drawSection(root, view, scale) {
  const {result} = view;
  const names = zoneNames(root, scale);
  const sides = [result.controls.thickness_mm, result.controls.right_thickness_mm];
  const deep = Math.max(...sides) * scale.perMm;
  const cap = Math.max(...result.passes.map(p => Math.min(0.3 * p.half_width_mm, 3))) * scale.perMm;
  const surface = names + cap + 8;
  const g = svg('g', {class: 'section'});
  const [first, last] = scale.ends(result).map(mm => scale.clamp(mm));
  [[first, scale.x(0), sides[0]], [scale.x(0), last, sides[1]]].forEach(([from, to, mm]) => {
    g.append(svg('rect', {class: 'plate', x: shown(from), y: shown(surface),
      width: shown(to - from), height: shown(mm * scale.perMm)}));
  });
  for (const zone of result.zones) {
    const [from, to] = [scale.clamp(zone.from_mm), scale.clamp(zone.to_mm)];
    if (to > from && zone.zone !== 'fusion') {
      const mm = zone.from_mm < 0 ? sides[0] : sides[1];
      g.append(svg('rect', {class: `zone zone-${SHADE[zone.zone]}`, x: shown(from),
        y: shown(surface), width: shown(to - from), height: shown(mm * scale.perMm)}));
    }
  }
  boundaries(g, scale, surface, x => surface + sides[x < scale.x(0) ? 0 : 1] * scale.perMm, false);
  g.append(bead(result, surface, sides.map(mm => mm * scale.perMm), cap, scale));
  const line = surface + result.traverse_depth_mm * scale.perMm;
  g.append(svg('line', {class: 'traverse', x1: first, x2: last, y1: shown(line), y2: shown(line)}));
  root.append(g);
  const told = [plates(view, sides), 'to scale; numbers along the dotted line'];
  return note(root, told, surface + deep + 4, scale);
}

// A note in one line where it fits.
function note(root, parts, top, scale) {
  const {left, width, small} = scale.frame;
  const whole = parts.join(', ');
  const lines = whole.length * small * 0.49 < width - left ? [whole] : parts;
  lines.forEach((line, i) => root.append(svg('text', {class: 'soft', x: left,
    y: shown(top + small + i * (small + 3)), 'font-size': small}, line)));
  return top + 2 * small + 6 + (lines.length - 1) * (small + 3);
}

// As wide as the passes on the arc side and as the fusion zone along the dotted line, down to
// the root of each plate.
function bead(result, surface, deeps, cap, scale) {
  const depth = result.traverse_depth_mm * scale.perMm;
  const c = scale.x(0);
  const [left, right] = [-1, 1].map((side, i) => {
    const melted = result.zones.filter(z => z.zone === 'fusion').map(z => (i ? z.to_mm : -z.from_mm));
    return halfBead(result.passes, Math.max(0, ...melted) * scale.perMm, depth, deeps, i, scale.perMm)
      .map(([x, y]) => `${shown(c + side * x)} ${shown(surface + y)}`);
  });
  const text = `M${left[0]}Q${shown(c)} ${shown(surface - 2 * cap)} ${right.join('L')}`
    + `L${left.reverse().slice(0, -1).join('L')}Z`;
  return svg('path', {class: 'zone-6 bead', d: text});
}

// Thin lines between zones; the outline of the bead is one already.
export function boundaries(place, scale, top, bottomAt, roundTheBead) {
  scale.spans.slice(1).forEach((span, i) => {
    const ofBead = [span.zone, scale.spans[i].zone].includes('fusion');
    if (ofBead && !roundTheBead) return;
    place.append(svg('line', {class: 'boundary', x1: shown(span.from), x2: shown(span.from),
      y1: shown(top), y2: shown(bottomAt(span.from))}));
  });
}

// Names over their zones; on a narrow picture each name once.
function zoneNames(root, scale) {
  const {small, narrow, width} = scale.frame;
  const size = narrow ? 11 : small;
  const centre = scale.x(0);
  const spans = narrow ? onceEach(scale.spans, centre) : scale.spans;
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

// The plates by their thickness; a joint that is not flat is laid flat.
function plates(view, [left, right]) {
  const thick = [...new Set([left, right].map(mm => words(mm, 'mm', view.units)))].join(' and ');
  const flat = ['tee', 'lap', 'corner', 'socket'].includes(view.case.joint);
  return `${thick} plate${flat ? ` (${view.case.joint} laid flat)` : ''}`;
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
