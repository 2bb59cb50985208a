// Names of zones over the section: a name stands in its zone where there is room, else a row
// higher and outwards, the inner ones above the outer ones, so that no leader goes through a name.
const MOST_ROWS = 4;
const LETTER = 0.5;
const GAP = 6;

// Neighbouring stretches of one zone, from left to right, in pixels.
export function stretches(zones, place) {
  const all = [];
  for (const zone of zones) {
    const last = all[all.length - 1];
    const to = place(zone.to_mm);
    if (last && last.zone === zone.zone) last.to = to;
    else all.push({zone: zone.zone, from: place(zone.from_mm), to});
  }
  return all.filter(one => one.to - one.from >= 1);
}

// Where each name goes: its box, its row from below, and the foot of its leader.
export function named(spans, {size, centre, width}) {
  const names = spans.map(span => {
    const wide = span.zone.length * size * LETTER;
    const foot = (span.from + span.to) / 2;
    const inner = span.from < centre && span.to > centre;
    return {text: span.zone, wide, foot, inner, left: foot - wide / 2, row: 0,
      tight: inner || wide + GAP > span.to - span.from};
  });
  const set = names.filter(name => !name.tight);
  const tight = names.filter(name => name.tight && !name.inner);
  outsideIn(tight.filter(name => name.foot < centre), -1, set, width);
  outsideIn(tight.filter(name => name.foot >= centre).reverse(), 1, set, width);
  const middle = names.find(name => name.inner);
  if (middle) middle.row = middleRow(middle, set, tight);
  return names.filter(name => name.row < MOST_ROWS);
}

function outsideIn(names, side, set, width) {
  const outer = [];
  for (const name of names) {
    const left = side < 0 ? name.foot - name.wide : name.foot;
    name.left = Math.min(width - name.wide, Math.max(0, left));
    if (set.some(other => meet(name, other))) name.row = 1;
    for (const other of outer) {
      if (meet(name, other) || under(name, other)) name.row = Math.max(name.row, other.row + 1);
    }
    outer.push(name);
  }
}

function middleRow(middle, set, tight) {
  const rows = tight.filter(other => meet(middle, other) || under(middle, other)).map(other => other.row);
  return Math.max(set.some(other => meet(middle, other)) ? 1 : 0, ...rows.map(row => row + 1));
}

function meet(one, other) {
  return one.left < other.left + other.wide + GAP && other.left < one.left + one.wide + GAP;
}

// Whether the other's leader would go through the name.
function under(name, other) {
  return other.foot > name.left - GAP && other.foot < name.left + name.wide + GAP;
}
