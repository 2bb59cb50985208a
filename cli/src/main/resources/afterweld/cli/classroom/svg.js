// Small helpers for drawing: elements, paths, and numbers short enough for attributes.
const NAMESPACE = 'http://www.w3.org/2000/svg';

export function svg(name, attributes = {}, ...children) {
  const element = document.createElementNS(NAMESPACE, name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== null) element.setAttribute(key, String(value));
  }
  element.append(...children);
  return element;
}

export function html(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === true) element.setAttribute(key, '');
    else if (value !== undefined && value !== null && value !== false) {
      element.setAttribute(key, String(value));
    }
  }
  element.append(...children);
  return element;
}

export function shown(pixels) {
  return Math.round(pixels * 10) / 10;
}

// A path through points; a gap where a point has no value.
export function path(points) {
  let text = '';
  let drawing = false;
  for (const [x, y] of points) {
    if (y === null || x === null || !Number.isFinite(y)) {
      drawing = false;
    } else {
      text += `${drawing ? 'L' : 'M'}${shown(x)} ${shown(y)}`;
      drawing = true;
    }
  }
  return text;
}

// A closed area between two lines over the same places, cut where one has no value.
export function area(xs, lows, highs) {
  let text = '';
  let from = 0;
  const known = i => lows[i] !== null && highs[i] !== null;
  while (from < xs.length) {
    while (from < xs.length && !known(from)) from++;
    let to = from;
    while (to < xs.length && known(to)) to++;
    if (to - from > 1) {
      const there = [];
      const back = [];
      for (let i = from; i < to; i++) {
        there.push([xs[i], highs[i]]);
        back.unshift([xs[i], lows[i]]);
      }
      text += path(there) + path(back).replace('M', 'L') + 'Z';
    }
    from = to;
  }
  return text;
}

export function ticks(from, to, most) {
  const rough = (to - from) / Math.max(1, most);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map(m => m * power).find(s => s >= rough * 0.999);
  const all = [];
  for (let i = Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i++) {
    all.push(Number((i * step).toPrecision(12)));
  }
  return all;
}
