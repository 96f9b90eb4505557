import type { Answer } from '../../src/connection/door.ts';
import type { Waiting } from '../../src/connection/line.ts';
import { settle } from '../settle.ts';

/** A door that answers as told, once each, and is open after that. */
export class ScriptedDoor {
  isShut = false;
  knocks = 0;
  readonly answers: Answer[] = [];

  knock(): Promise<Answer> {
    this.knocks += 1;
    const answer = this.answers.shift() ?? { kind: 'open' };
    if (answer.kind === 'open') this.isShut = false;
    return Promise.resolve(answer);
  }
}

/** A hub whose starts fail or succeed as told, and which a test can drop. */
export class ScriptedHub {
  starts = 0;
  /** Starts from now on fail while this is set. */
  isAway = false;
  #onclose: () => void = () => {};

  start(): Promise<void> {
    this.starts += 1;
    return this.isAway ? Promise.reject(new Error('away')) : Promise.resolve();
  }

  onclose(callback: () => void): void {
    this.#onclose = callback;
  }

  drop(): void {
    this.#onclose();
  }
}

/** Waits that pass only when the test lets them, and are written down; chance is always the same. */
export class WrittenWaiting implements Waiting {
  readonly waits: number[] = [];
  time = 0;
  chance = 0.5;
  #wake: () => void = () => {};

  sleep(milliseconds: number): Promise<void> {
    this.waits.push(milliseconds);
    return new Promise((resolve) => {
      this.#wake = resolve;
    });
  }

  now(): number {
    return this.time;
  }

  random(): number {
    return this.chance;
  }

  /** Lets the wait that is going on pass, and everything that follows from it happen. */
  async pass(): Promise<void> {
    this.#wake();
    await settle();
  }
}
