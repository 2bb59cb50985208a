// What a case says that no control shows: it stays as it is written, and is said here.
import {html} from './svg.js';

const SHOWN = [/^title$/, /^left\.(alloy|temper|thickness)$/, /^filler(\.alloy|\.dilution)?$/,
  /^passes\.0\.(current|travel_speed|preheat)$/, /^natural_age$/, /^bend\.angle$/];
const OF_STEPS = {solution_treat: ['temperature', 'soak'], age: ['temperature', 'time']};

export function drawKept(place, tree) {
  const rows = keptRows(tree).flatMap(([name, text]) => [html('dt', {}, name), html('dd', {}, text)]);
  place.replaceChildren(...remarks(tree).map(text => html('p', {}, text)), html('dl', {}, ...rows));
}

// Pairs of a part of the case and what is kept of it.
export function keptRows(tree) {
  const rows = new Map();
  for (const [keys, value] of leaves(tree, [])) {
    if (SHOWN.some(pattern => pattern.test(keys.join('.'))) || ofShownStep(tree, keys)) continue;
    const [part, rest] = named(keys);
    const text = [...rest, value].join(' ').replaceAll('_', ' ');
    rows.set(part, rows.has(part) ? `${rows.get(part)}, ${text}` : text);
  }
  return [...rows];
}

// The controls of the furnace move the first step of their kind.
function ofShownStep(tree, [first, index, kind, key]) {
  return first === 'after_weld' && (OF_STEPS[kind] || []).includes(key)
    && tree.after_weld.findIndex(step => kind in step) === Number(index);
}

function* leaves(value, keys) {
  if (value === null || typeof value !== 'object') yield [keys, String(value)];
  else for (const [key, inner] of Object.entries(value)) yield* leaves(inner, [...keys, key]);
}

function named(keys) {
  const [first, second, third, ...rest] = keys;
  if (first === 'passes') return [`pass ${Number(second) + 1}`, [third, ...rest]];
  if (first === 'after_weld') {
    return [`step ${Number(second) + 1}, ${third.replaceAll('_', ' ')}`, rest];
  }
  return [first.replaceAll('_', ' '), keys.slice(1)];
}

function remarks(tree) {
  const passes = tree.passes || [];
  return [
    passes.length > 1 && 'The controls move pass 1; the other passes stay as written.',
    tree.right && tree.right.alloy !== undefined
      && 'The controls show the left side; the right side stays as written.',
    passes.some(pass => 'bead_width' in pass) && 'The measured bead belongs to the weld as written: a moved'
      + ' control of the weld keeps the arc efficiency instead and lets the bead follow.',
  ].filter(Boolean);
}
