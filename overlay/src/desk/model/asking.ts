import { type ReadonlySignal, signal } from '@preact/signals';
import type { Calls, DeskMethod } from '../../connection/deskCalls.ts';
import type { Reply } from '../../wire.ts';
import type { DeskMethods } from '../../wireMethods.ts';

/** Asks the server and says why where it refuses. */
export class Asking {
  readonly #calls: Calls;
  readonly #said = signal('');

  constructor(calls: Calls) {
    this.#calls = calls;
  }

  /** Why the last thing asked for was not done; empty where it was. */
  get said(): ReadonlySignal<string> {
    return this.#said;
  }

  async ask<M extends DeskMethod>(method: M, ...args: Parameters<DeskMethods[M]>): Promise<Reply> {
    const reply = await this.#calls.call(method, ...args);
    this.#said.value = reply.refusal ?? '';
    return reply;
  }

  /** Says why something is not asked for at all. */
  say(sentence: string): void {
    this.#said.value = sentence;
  }

  /** For what is asked for by the way: nobody wants to read that there was nothing to do. */
  askQuietly<M extends DeskMethod>(method: M, ...args: Parameters<DeskMethods[M]>): Promise<Reply> {
    return this.#calls.call(method, ...args);
  }
}
