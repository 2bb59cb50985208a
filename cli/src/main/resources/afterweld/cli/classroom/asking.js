// Talks to the server that the page came from: numbers every change, drops what is outdated.
const BUSY = 503;
const AGAIN_MS = 1500;
const MOST_TRIES = 5;
const PAGE = `page-${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;

export class Problem extends Error {
  constructor(lines) {
    super(lines.join('\n'));
    this.lines = lines;
  }
}

async function sent(path, body, signal) {
  try {
    return await fetch(path, {
      method: 'POST',
      headers: {'Content-Type': 'application/json'},
      body: JSON.stringify(body),
      signal,
    });
  } catch (fault) {
    if (fault.name === 'AbortError') throw fault;
    throw new Problem(['The classroom program on this machine does not answer. Is it running?']);
  }
}

// Asks again where too much is being computed at once; work that took too long is not asked for again.
async function answered(path, body, signal) {
  for (let tries = 1; ; tries++) {
    const answer = await sent(path, body, signal);
    const full = answer.status === BUSY && answer.headers.has('Retry-After');
    if (!full || tries === MOST_TRIES) return answer;
    await new Promise(resolve => setTimeout(resolve, AGAIN_MS));
  }
}

export async function post(path, body, signal) {
  const answer = await answered(path, body, signal);
  const json = await answer.json();
  if (answer.status === 409) throw new DOMException('outdated', 'AbortError');
  if (!answer.ok || json.problems) throw new Problem(json.problems || ['The program could not answer.']);
  return json;
}

// One line of questions: a new change ends what the last one still waited for.
export class Asker {
  constructor(name) {
    this.page = `${PAGE}-${name}`;
    this.waiting = new AbortController();
    this.latest = {turn: 0, signal: this.waiting.signal};
  }

  next() {
    this.waiting.abort();
    this.waiting = new AbortController();
    this.latest = {turn: this.latest.turn + 1, signal: this.waiting.signal};
    return this.latest;
  }

  ask(change, want, tree) {
    const body = {page: this.page, turn: change.turn, want, case: tree};
    return post('/api/section', body, change.signal);
  }

  current(change) {
    return change === this.latest;
  }
}

export async function get(path) {
  const answer = await fetch(path);
  return answer.json();
}
