// Metric numbers from the simulator in the units that the reader chose.
const INCH = 25.4;
const KSI = 6.894757293168361;

const KINDS = {
  HV: {us: 'HV', decimals: [0, 0]},
  MPa: {us: 'ksi', to: v => v / KSI, decimals: [0, 1]},
  mm: {us: 'in', to: v => v / INCH, decimals: [1, 2]},
  '°C': {us: '°F', to: v => v * 1.8 + 32, decimals: [0, 0]},
  'mm/s': {us: 'in/min', to: v => v * 60 / INCH, decimals: [1, 1]},
  'kJ/mm': {us: 'kJ/in', to: v => v * INCH, decimals: [2, 1]},
  A: {decimals: [0, 0]},
  V: {decimals: [1, 1]},
  '%': {decimals: [0, 0]},
  'wt%': {decimals: [2, 2]},
  h: {decimals: [2, 2]},
};

export const QUANTITIES = {
  hardness: {key: 'hardness_HV', name: 'hardness', unit: 'HV'},
  yield: {key: 'yield_MPa', name: 'yield strength', unit: 'MPa'},
  tensile: {key: 'tensile_MPa', name: 'tensile strength', unit: 'MPa'},
};

export function unitName(unit, units) {
  const kind = KINDS[unit];
  return units === 'us' && kind && kind.us ? kind.us : unit;
}

export function inUnits(value, unit, units) {
  const kind = KINDS[unit];
  return units === 'us' && kind && kind.to ? kind.to(value) : value;
}

export function decimals(unit, units) {
  const kind = KINDS[unit];
  return kind ? kind.decimals[units === 'us' ? 1 : 0] : 2;
}

// Half up on the decimal digits, as the commands print it.
export function rounded(value, digits) {
  if (value === null || value === undefined || !Number.isFinite(value)) return '–';
  const text = Number(`${Math.round(Number(`${Math.abs(value)}e${digits}`))}e-${digits}`);
  const sign = value < 0 && text !== 0 ? '−' : '';
  return sign + text.toFixed(digits);
}

export function number(value, unit, units) {
  return value === null || value === undefined
    ? '–' : rounded(inUnits(value, unit, units), decimals(unit, units));
}

export function words(value, unit, units) {
  return `${number(value, unit, units)} ${unitName(unit, units)}`;
}

// A difference: the zero of a scale drops out, and whole numbers get a decimal, for the difference
// of two rounded numbers may be one off.
export function difference(now, then, unit, units) {
  if (now === null || then === null || now === undefined || then === undefined) return '–';
  const change = inUnits(now, unit, units) - inUnits(then, unit, units);
  const text = rounded(change, Math.max(1, decimals(unit, units)));
  return change > 0 && Number(text) !== 0 ? `+${text}` : text;
}

export function duration(hours) {
  const minutes = hours * 60;
  if (minutes < 1) return `${rounded(minutes * 60, minutes * 60 < 10 ? 1 : 0)} s`;
  if (hours < 1) return `${trimmed(minutes)} min`;
  if (hours < 72) return `${trimmed(hours)} h`;
  return `${trimmed(hours / 24)} days`;
}

const HOURS = {min: 1 / 60, h: 1, days: 24};

// A text as the controls write it, in hours; undefined where it is none.
export function hoursIn(text) {
  const [value, unit] = parts(text);
  return Object.hasOwn(HOURS, unit) ? value * HOURS[unit] : undefined;
}

// The same in a metric unit.
export function metricIn(text, unit) {
  const [value, name] = parts(text);
  if (name === unit) return value;
  const {us, to} = KINDS[unit];
  return us && name === us ? (value - to(0)) / (to(1) - to(0)) : undefined;
}

function parts(text) {
  const [, value, unit] = /^(\d+(?:\.\d+)?) (\S+)$/.exec(text) || [];
  return [Number(value), unit];
}

function trimmed(value) {
  return String(Number(value.toFixed(value < 10 ? 2 : 1)));
}
