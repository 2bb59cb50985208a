// Puts the page together: one case, one result, what is pinned, and who is told of a change.
import {keepArranged} from './arranging.js';
import {Asker, Problem, get} from './asking.js';
import {drawBend} from './bend.js';
import {copy, fromHash, put, toHash} from './case.js';
import {Controls} from './controls.js';
import {readCase, saveCase, sayOn} from './keeping.js';
import {drawKept} from './kept.js';
import {Lessons} from './lessons.js';
import {drawNotes, drawNumbers, drawStations} from './numbers.js';
import {Picture, summary} from './picture.js';
import {Replay} from './replay.js';
import {QUANTITIES, rounded} from './units.js';

const byId = id => document.getElementById(id);
const view = {case: null, units: 'metric', quantity: 'hardness', result: null, settled: null,
  good: null, pinned: null, moment: null};
const asker = new Asker('main');
const picture = new Picture(byId('picture'));
const SLOW_MS = 450;
const timings = [];
window.afterweldTimings = timings;
let controls;
let lessons;
let replay;
let drawing = 0;
// What was on the page before a lesson.
let before = null;

function redraw() {
  if (!view.result) return;
  picture.draw(view);
  const settled = view.result.settled;
  byId('settling').textContent = settled ? '' : 'preview …';
  drawKept(byId('kept'), view.case);
  byId('title').textContent = view.case.title || 'Section across the weld';
  if (!view.settled) return;
  const pinned = view.pinned && view.pinned.result.numbers;
  drawNumbers(byId('numbers'), view.settled.numbers, pinned, view.units);
  if (byId('stations').open) drawStations(byId('table'), view.settled, view.units);
  drawNotes(byId('notes'), view.settled.warnings, view.settled.cautions);
  const {bend, states, controls: at} = view.settled;
  byId('kink').textContent = drawBend(byId('strip'), bend, states, at.thickness_mm, view.units);
  showAngle(bend.angle_deg);
}

function redrawSoon() {
  cancelAnimationFrame(drawing);
  drawing = requestAnimationFrame(redraw);
}

function showAngle(degrees) {
  const text = `${rounded(degrees, 0)}°`;
  if (document.activeElement !== byId('angle')) byId('angle').value = degrees;
  byId('angle-text').textContent = text;
  byId('angle').setAttribute('aria-valuetext', `${rounded(degrees, 0)} degrees`);
}

function showControls() {
  if (view.result) controls.show(view.case, view.result.controls, view.result.passes, view.units);
}

// Why the picture is not of the case that the controls stand at.
function trouble(lines) {
  tell(lines);
  byId('stage').classList.toggle('stale', lines.length > 0);
}

function tell(lines) {
  byId('trouble').hidden = lines.length === 0;
  byId('trouble').textContent = lines.join('\n');
}

// Preview first where the weld itself changes, then the settled picture.
async function recompute(previewed) {
  const change = asker.next();
  const began = performance.now();
  byId('stage').setAttribute('aria-busy', 'true');
  sayIfSlow(change);
  try {
    if (previewed) {
      show(await asker.ask(change, 'preview', view.case), began, 'preview');
      change.shown = true;
    }
    const result = await asker.ask(change, 'settled', view.case);
    view.settled = result;
    view.good = view.case;
    show(result, began, previewed ? 'settled' : 'aged');
    byId('live').textContent = `Settled. ${summary(view)}`;
    remember();
    return null;
  } catch (fault) {
    if (fault.name === 'AbortError') return null;
    trouble(fault instanceof Problem ? fault.lines : ['The page could not show this.']);
    if (!(fault instanceof Problem)) throw fault;
    return fault.lines;
  } finally {
    if (asker.current(change)) {
      byId('stage').setAttribute('aria-busy', 'false');
      byId('settling').textContent = '';
    }
  }
}

// Heat that is followed through a whole part takes seconds: then the page says that it computes.
function sayIfSlow(change) {
  setTimeout(() => {
    const busy = byId('stage').getAttribute('aria-busy') === 'true';
    if (!busy || change.shown || !asker.current(change)) return;
    byId('settling').textContent = 'computing …';
    byId('live').textContent = 'Computing; the picture is of the case before.';
  }, SLOW_MS);
}

function show(result, began, what) {
  trouble([]);
  view.result = result;
  showControls();
  redraw();
  timings.push({what, ms: performance.now() - began});
}

const AFTER = new Set(['rest', 'treatment', 'solution', 'soak', 'age', 'age-time', 'angle']);

async function changed(write, id) {
  const tree = copy(view.case);
  write(tree);
  if (JSON.stringify(tree) === JSON.stringify(view.case)) return;
  view.case = tree;
  if (id !== 'angle') replay.forget();
  if (await recompute(!AFTER.has(id))) showControls();
}

function setCase(tree) {
  view.case = tree;
  replay.forget();
  return recompute(true);
}

// A case from outside, which may be no case at all: then the last good one stays.
async function tryCase(tree, otherwise) {
  const faults = await setCase(tree);
  if (!faults) return;
  await setCase(otherwise);
  tell(faults);
}

function remember() {
  const pinned = view.pinned ? {pinned: view.pinned.case} : {};
  const hash = toHash({case: view.case, units: view.units, quantity: view.quantity, ...pinned});
  history.replaceState(null, '', `#${hash}`);
}

function pin() {
  setPin(view.pinned ? null : view.settled && {result: view.settled, case: view.good});
}

function setPin(pinned) {
  view.pinned = pinned;
  byId('pin').textContent = view.pinned ? 'Take the pin away' : 'Pin this result';
  byId('pin').setAttribute('aria-pressed', String(Boolean(view.pinned)));
  redraw();
  remember();
}

async function open(file) {
  const tree = await readCase(file);
  lessons.leave();
  await tryCase(tree, view.good);
}

async function told(work) {
  try {
    await work();
  } catch (fault) {
    tell(fault instanceof Problem ? fault.lines : [String(fault.message || fault)]);
  }
}

async function copyLink() {
  remember();
  try {
    await navigator.clipboard.writeText(location.href);
    sayOn(byId('link'), 'Link copied', 'It opens while this program runs on this port.', byId('live'));
  } catch {
    sayOn(byId('link'), 'See address line', 'The link stands in the address line.', byId('live'));
  }
}

function showChosen(name, value) {
  view[name] = value;
  showChoice(name);
}

function showChoice(name) {
  for (const input of document.querySelectorAll(`input[name="${name}"]`)) {
    input.checked = input.value === view[name];
  }
}

function showUnits(units) {
  showChosen('units', units);
  showControls();
  redraw();
  lessons.unitsChanged();
  replay.unitsChanged();
}

// What a link holds: units, curve, the pinned case and the case; what is no case is told.
async function arrive(linked, otherwise) {
  if (['metric', 'us'].includes(linked.units)) showUnits(linked.units);
  if (Object.hasOwn(QUANTITIES, linked.quantity)) showChosen('quantity', linked.quantity);
  let pinned = null;
  if (linked.pinned) {
    await setCase(linked.pinned);
    if (view.good === linked.pinned) pinned = {result: view.settled, case: view.good};
  }
  setPin(pinned);
  await tryCase(linked.case, otherwise);
}

// A hash that is neither a case nor a place on the page.
function damaged(hash) {
  return hash.length > 1 && !fromHash(hash) && !byId(hash.slice(1));
}

function choose(name, then) {
  showChoice(name);
  for (const input of document.querySelectorAll(`input[name="${name}"]`)) {
    input.addEventListener('change', () => {
      view[name] = input.value;
      then();
    });
  }
}

// What a lesson does to the page: it takes the place of the reader's case and pin, and gives them
// back at its end.
const lessonPage = {
  units: () => view.units,
  begin(tree, lesson) {
    before = before || {case: view.case, good: view.good, pinned: view.pinned, quantity: view.quantity};
    setPin(null);
    showChosen('quantity', lesson.quantity);
    return setCase(tree);
  },
  look: setCase,
  compare(pinned, tree) {
    setPin(pinned);
    return setCase(tree);
  },
  ended() {
    const {case: tree, good, pinned, quantity} = before;
    before = null;
    view.good = good;
    setPin(pinned);
    showChosen('quantity', quantity);
    return tryCase(tree, good);
  },
};

function wire() {
  keepArranged(document.querySelector('main'));
  byId('pin').addEventListener('click', pin);
  byId('save').addEventListener('click', () => told(() => saveCase(view.case)));
  byId('link').addEventListener('click', copyLink);
  byId('print').addEventListener('click', () => window.print());
  byId('open').addEventListener('click', () => byId('file').click());
  byId('file').addEventListener('change', () => {
    const [file] = byId('file').files;
    byId('file').value = '';
    if (file) told(() => open(file));
  });
  byId('angle').addEventListener('input', () => {
    const angle = Number(byId('angle').value);
    showAngle(angle);
    changed(tree => put(tree, ['bend', 'angle'], `${angle} deg`), 'angle');
  });
  byId('stations').addEventListener('toggle', redraw);
  choose('units', () => {
    showUnits(view.units);
    remember();
  });
  choose('quantity', () => {
    redraw();
    remember();
  });
  new ResizeObserver(redrawSoon).observe(byId('picture'));
  matchMedia('print').addEventListener('change', redraw);
  window.addEventListener('beforeprint', () => {
    byId('remarks').open = true;
  });
  window.addEventListener('hashchange', () => {
    const linked = fromHash(location.hash);
    if (linked) {
      lessons.leave();
      arrive(linked, view.good);
    } else if (damaged(location.hash)) {
      tell(['The link is damaged; the page stays as it was.']);
    }
  });
}

function replayParts() {
  return {play: byId('play'), back: byId('back'), forth: byId('forth'), scrub: byId('scrub'),
    moment: byId('moment'), leave: byId('leave'), units: () => view.units,
    tell: text => {
      byId('live').textContent = text;
    }};
}

// A bend that is moved meanwhile changes no moment.
function withoutBend(tree) {
  return JSON.stringify({...tree, bend: undefined});
}

// Of the same turn as the case on the page: the next change ends it here and at the server.
async function loadReplay() {
  const weld = withoutBend(view.case);
  try {
    return await asker.ask(asker.latest, 'replay', view.case);
  } catch (fault) {
    if (fault.name === 'AbortError' && withoutBend(view.case) === weld) return loadReplay();
    if (fault instanceof Problem) tell(fault.lines);
    return null;
  }
}

async function main() {
  const [library, data] = await Promise.all([get('/api/library'), get('/lessons.json')]);
  const linked = fromHash(location.hash);
  view.good = data.start;
  controls = new Controls(byId('controls'), library, changed);
  lessons = new Lessons(byId('lesson-list'), byId('lesson'), data, lessonPage);
  replay = new Replay(replayParts(), loadReplay, moment => {
    view.moment = moment;
    redraw();
  });
  wire();
  const broken = damaged(location.hash);
  await arrive(linked || {case: data.start}, data.start);
  if (broken) tell(['The link is damaged; this is the plate to begin with.']);
  document.body.dataset.ready = 'true';
}

main();
