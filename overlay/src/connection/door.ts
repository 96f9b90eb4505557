import type { HeldKey } from './key.ts';

/** What came of knocking: the way is open, nobody answered, or the plain sentence of a refusal. */
export type Answer = { kind: 'open' } | { kind: 'unreachable' } | { kind: 'refused'; sentence: string };

const noKey = 'This page needs its link: open the one printed in the terminal.';

/** Turns the key of access into the cookie that the hub asks for. */
export class Door {
  readonly #held: HeldKey;
  readonly #hub: string;
  readonly #post: typeof fetch;

  constructor(held: HeldKey, hub: string, post: typeof fetch = (...args) => fetch(...args)) {
    this.#held = held;
    this.#hub = hub;
    this.#post = post;
  }

  /** Whether the hub would refuse without entering first. */
  get isShut(): boolean {
    return this.#held.isNew;
  }

  /** Changes the key into a cookie or, without a key, asks whether the cookie of an earlier visit still opens the hub. */
  async knock(): Promise<Answer> {
    const { key } = this.#held;
    const answer = await this.#ask(key === null ? this.#probe() : this.#enter(key));
    if (answer.kind === 'open') this.#held.isNew = false;
    return answer;
  }

  #enter(key: string): Promise<Response> {
    const headers = { 'content-type': 'application/json' };
    const [hub] = this.#hub.split('?');
    return this.#post('/enter', { method: 'POST', headers, body: JSON.stringify({ key, hub }) });
  }

  /** A browser hides why a socket was refused, but not why this was. */
  #probe(): Promise<Response> {
    const [path, query] = this.#hub.split('?');
    const more = query === undefined ? '' : `&${query}`;
    return this.#post(`${path}/negotiate?negotiateVersion=1${more}`, { method: 'POST' });
  }

  async #ask(asked: Promise<Response>): Promise<Answer> {
    try {
      const response = await asked;
      const { status } = response;
      if (status === 401 || status === 403)
        return { kind: 'refused', sentence: (await sentenceOf(response)) || noKey };
      return { kind: status === 429 || status >= 500 ? 'unreachable' : 'open' };
    } catch {
      return { kind: 'unreachable' };
    }
  }
}

async function sentenceOf(response: Response): Promise<string> {
  const isPlain = response.headers.get('content-type')?.startsWith('text/plain') ?? false;
  return isPlain ? (await response.text()).trim() : '';
}
