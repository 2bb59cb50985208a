// Finds the place of a label among lines, rings and labels: near where it is wanted, over none.
const TALL = 0.8;
const DEEP = 0.25;
const MOST_STEPS = 24;
const STEP = 4;
const SAMPLE = 6;

// A wish is {xs, wanted, up, wide, size}: places along, the level wanted, and which way is better.
export function placeOf(wish, {top, bottom}, {labels, lines, rings}) {
  let best = null;
  wish.xs.forEach((x, i) => {
    for (let step = 0; step <= MOST_STEPS; step++) {
      for (const way of wish.up ? [-1, 1] : [1, -1]) {
        const level = wish.wanted + way * step * STEP;
        if (level < top + wish.size || level > bottom - 4) continue;
        const box = boxOf(x, level, wish);
        const cost = step + 6 * i + (way === (wish.up ? -1 : 1) ? 0 : 8)
          + 150 * labels.filter(other => overlap(box, other)).length
          + 40 * lines.filter(line => crosses(line, box)).length
          + 40 * rings.filter(ring => overlap(box, ring)).length;
        if (!best || cost < best.cost) best = {x, level, cost, box};
      }
    }
  });
  return best || {x: wish.xs[0], level: top + wish.size, box: boxOf(wish.xs[0], top, wish)};
}

export function boxOf(x, level, {wide, size}) {
  return {left: x - wide / 2 - 3, right: x + wide / 2 + 3,
    top: level - TALL * size - 3, bottom: level + DEEP * size + 3};
}

function overlap(one, other) {
  return one.left < other.right && other.left < one.right
    && one.top < other.bottom && other.top < one.bottom;
}

function crosses(line, box) {
  return line.some(([x, y], i) => i > 0 && y !== null && line[i - 1][1] !== null
    && x > box.left && line[i - 1][0] < box.right && enters(line[i - 1], [x, y], box));
}

function enters([fromX, fromY], [toX, toY], box) {
  const steps = Math.max(1, Math.ceil((toX - fromX) / SAMPLE));
  for (let k = 0; k <= steps; k++) {
    const x = fromX + (toX - fromX) * k / steps;
    const y = fromY + (toY - fromY) * k / steps;
    if (x > box.left && x < box.right && y > box.top && y < box.bottom) return true;
  }
  return false;
}
