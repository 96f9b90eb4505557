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

  /**
   * Changes the key into a cookie. Without a key, or with one that was changed before, asks whether the hub opens: its cookie may be
   * old, and a good key is no place for a viewer where all are taken.
   */
  async knock(): Promise<Answer> {
    const { key, isNew } = this.#held;
    const entered = key === null ? null : await this.#ask(this.#enter(key));
    if (entered?.kind === 'open') this.#held.isNew = false;
    return entered && (isNew || entered.kind !== 'open') ? entered : this.#ask(this.#probe());
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
      const sentence = status >= 400 ? await sentenceOf(response) : '';
      if (status === 401 || status === 403) return { kind: 'refused', sentence: sentence || noKey };
      if (status === 503 && sentence !== '') return { kind: 'refused', sentence };
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
