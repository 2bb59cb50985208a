// Talks to the server that the page came from: numbers every change, drops what is outdated.
const PAGE = `page-${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;

export class Problem extends Error {
  constructor(lines) {
    super(lines.join('\n'));
    this.lines = lines;
  }
}

export async function post(path, body, signal) {
  let answer;
  try {
    answer = await fetch(path, {
      method: 'POST',
      headers: {'Content-Type': 'application/json'},
      body: JSON.stringify(body),
      signal,
    });
  } catch (fault) {
    if (fault.name === 'AbortError') throw fault;
    throw new Problem(['The classroom program on this machine does not answer. Is it running?']);
  }
  const json = await answer.json();
  if (answer.status === 409) throw new DOMException('outdated', 'AbortError');
  if (!answer.ok || json.problems) throw new Problem(json.problems || ['The program could not answer.']);
  return json;
}

// One line of questions: a new change ends what the last one still waited for.
export class Asker {
  constructor(name) {
    this.page = `${PAGE}-${name}`;
    this.turn = 0;
    this.waiting = null;
  }

  next() {
    if (this.waiting) this.waiting.abort();
    this.waiting = new AbortController();
    this.turn++;
    return {turn: this.turn, signal: this.waiting.signal};
  }

  ask(change, want, tree) {
    const body = {page: this.page, turn: change.turn, want, case: tree};
    return post('/api/section', body, change.signal);
  }

  current(change) {
    return change.turn === this.turn;
  }
}

export async function get(path) {
  const answer = await fetch(path);
  return answer.json();
}
