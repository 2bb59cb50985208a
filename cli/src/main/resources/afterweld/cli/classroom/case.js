// The case on the page: a tree with the keys of a case file. Everything on the page follows from
// it, and it is what is saved, linked and sent to the simulator.

export function copy(tree) {
  return JSON.parse(JSON.stringify(tree));
}

// A change on top of a tree: null takes a key away, a list replaces a list.
export function merged(tree, change) {
  const result = copy(tree);
  for (const [key, value] of Object.entries(change || {})) {
    if (value === null) delete result[key];
    else if (isGroup(value) && isGroup(result[key])) result[key] = merged(result[key], value);
    else result[key] = copy(value);
  }
  return result;
}

function isGroup(value) {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}

export function put(tree, keys, value) {
  let at = tree;
  for (const key of keys.slice(0, -1)) {
    if (at[key] === undefined || typeof at[key] !== 'object') at[key] = {};
    at = at[key];
  }
  at[keys[keys.length - 1]] = value;
}

export function treatment(tree) {
  const names = (tree.after_weld || []).map(step => Object.keys(step)[0]);
  const text = names.filter(name => name !== 'natural_age').join(' ');
  if (names.length === 0) return 'none';
  if (text === 'age') return 'age';
  return text === 'solution_treat quench age' ? 'full' : 'other';
}

// What the alloy's own schedule would be.
export function withTreatment(tree, kind, schedule) {
  if (kind === 'none' || !schedule) {
    delete tree.after_weld;
    return;
  }
  const age = {age: {temperature: `${schedule.age_C} °C`, time: `${schedule.age_h} h`}};
  const solution = {
    solution_treat: {temperature: `${schedule.solution_C} °C`, soak: `${schedule.soak_h} h`},
  };
  const quench = {quench: {medium: 'water', temperature: '25 °C', delay: '7 s'}};
  tree.after_weld = kind === 'age' ? [age] : [solution, quench, age];
}

export function step(tree, name) {
  const found = (tree.after_weld || []).find(one => name in one);
  return found ? found[name] : undefined;
}

// Sliders keep the arc's efficiency and let the bead follow: a measured bead belongs to the weld
// as it was written.
export function freeBead(tree, passes) {
  (tree.passes || []).forEach((pass, i) => {
    if ('bead_width' in pass && passes && passes[i]) {
      delete pass.bead_width;
      pass.efficiency = String(passes[i].efficiency);
    }
  });
}

export function toHash(view) {
  const bytes = new TextEncoder().encode(JSON.stringify(view));
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

export function fromHash(hash) {
  try {
    const text = atob(hash.replace('#', '').replaceAll('-', '+').replaceAll('_', '/'));
    const view = JSON.parse(new TextDecoder().decode(Uint8Array.from(text, c => c.charCodeAt(0))));
    return view && isGroup(view.case) ? view : null;
  } catch {
    return null;
  }
}
