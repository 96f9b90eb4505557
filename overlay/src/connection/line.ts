import { type ReadonlySignal, signal } from '@preact/signals';
import { longestWait, waitBefore } from './backoff.ts';
import type { Door } from './door.ts';

export type LineState = 'connecting' | 'connected' | 'reconnecting' | 'refused';

/** The part of SignalR's connection that a line needs. */
export interface Hub {
  start(): Promise<void>;
  onclose(callback: () => void): void;
}

/** Time and chance, so that tests bring their own. */
export interface Waiting {
  sleep(milliseconds: number): Promise<void>;
  now(): number;
  random(): number;
}

/** What a page does at the ends of a connection. */
export interface Ends {
  /** Before each try: what comes in after it belongs to the new connection. */
  opening(): void;
  opened?(): void;
  closed?(): void;
}

/** A connection that lasted this long was a sound one: the next try after it comes at once. In milliseconds. */
const settled = 2000;

/** Keeps one hub connected for as long as the page lives. */
export class Line {
  readonly #state = signal<LineState>('connecting');
  readonly #refusal = signal('');
  readonly #hub: Hub;
  readonly #door: Pick<Door, 'isShut' | 'knock'>;
  readonly #waiting: Waiting;
  readonly #longestWait: number;
  #closed: () => void = () => {};

  constructor(
    hub: Hub,
    door: Pick<Door, 'isShut' | 'knock'>,
    waiting: Waiting = realWaiting,
    longest: number = longestWait,
  ) {
    this.#hub = hub;
    this.#door = door;
    this.#waiting = waiting;
    this.#longestWait = longest;
    hub.onclose(() => this.#closed());
  }

  get state(): ReadonlySignal<LineState> {
    return this.#state;
  }

  /** Why the server does not let the page in, as one plain sentence; empty while it does. */
  get refusal(): ReadonlySignal<string> {
    return this.#refusal;
  }

  /**
   * Tries without end. A refusal does not stop it either, as another tab may have entered with the right link meanwhile.
   * @param ends What is told of the connection's beginning and end.
   */
  async keepOpen(ends: Ends): Promise<never> {
    for (let attempt = 0; ; attempt++) {
      await this.#waiting.sleep(waitBefore(attempt, this.#waiting.random(), this.#longestWait));
      const closed = new Promise<void>((resolve) => {
        this.#closed = resolve;
      });
      ends.opening();
      if (!(await this.#tryOnce())) continue;

      const since = this.#waiting.now();
      this.#show('connected');
      ends.opened?.();
      await closed;
      ends.closed?.();
      this.#show('reconnecting');
      if (this.#waiting.now() - since >= settled) attempt = -1;
    }
  }

  async #tryOnce(): Promise<boolean> {
    if (this.#door.isShut && !(await this.#isLetIn())) return false;
    try {
      await this.#hub.start();
      return true;
    } catch {
      await this.#isLetIn();
      return false;
    }
  }

  async #isLetIn(): Promise<boolean> {
    const answer = await this.#door.knock();
    if (answer.kind === 'refused') this.#show('refused', answer.sentence);
    return answer.kind === 'open';
  }

  #show(state: LineState, refusal = ''): void {
    this.#state.value = state;
    this.#refusal.value = refusal;
  }
}

export const realWaiting: Waiting = {
  sleep: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
  now: () => performance.now(),
  random: () => Math.random(),
};
