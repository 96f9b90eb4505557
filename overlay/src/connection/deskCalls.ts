import { type ReadonlySignal, signal } from '@preact/signals';
import type { Reply } from '../wire.ts';
import type { DeskMethods } from '../wireMethods.ts';

export type DeskMethod = keyof DeskMethods;

/** What a panel can say to the server. */
export interface Calls {
  call<M extends DeskMethod>(method: M, ...args: Parameters<DeskMethods[M]>): Promise<Reply>;
}

/** The part of SignalR's connection that sends. It keeps the order of calls and does not wait for one before the next. */
export interface Sender {
  invoke(method: string, ...args: unknown[]): Promise<unknown>;
}

/**
 * What is sent late, in order, when the line is down: entries, as the presenter goes on writing, and the order to clear the air.
 * Nothing may *appear* on air late, and a puzzle is not loaded behind the presenter's back.
 */
const waits: ReadonlySet<DeskMethod> = new Set<DeskMethod>([
  'PlaceDigit',
  'EraseCells',
  'ToggleBlockMark',
  'ToggleCellMark',
  'ToggleStrike',
  'SettleMarks',
  'Undo',
  'Redo',
  'ClearAir',
]);

const notConnected = 'Not connected: this was not done.';
const cutOff = 'The connection broke just then: look whether this was done.';

export class DeskCalls implements Calls {
  readonly #waiting = signal(0);
  readonly #sender: Sender;
  #queue: (() => void)[] = [];
  #isOpen = false;

  constructor(sender: Sender) {
    this.#sender = sender;
  }

  /** How many entries wait for the connection. */
  get waiting(): ReadonlySignal<number> {
    return this.#waiting;
  }

  call<M extends DeskMethod>(method: M, ...args: Parameters<DeskMethods[M]>): Promise<Reply> {
    if (this.#isOpen) return this.#send(method, args);
    if (!waits.has(method)) return Promise.resolve(refusal(notConnected));
    return new Promise((resolve) => {
      this.#queue.push(() => resolve(this.#send(method, args)));
      // Nobody made an entry by leaving a cell or by clearing the air.
      if (method !== 'SettleMarks' && method !== 'ClearAir') this.#waiting.value += 1;
    });
  }

  /** The line is up: what waited goes first. */
  open(): void {
    this.#isOpen = true;
    const waited = this.#queue;
    this.#queue = [];
    this.#waiting.value = 0;
    for (const send of waited) send();
  }

  close(): void {
    this.#isOpen = false;
  }

  async #send(method: DeskMethod, args: unknown[]): Promise<Reply> {
    try {
      return (await this.#sender.invoke(method, ...args)) as Reply;
    } catch {
      return refusal(cutOff);
    }
  }
}

function refusal(sentence: string): Reply {
  return { refusal: sentence, sequence: 0 };
}
