import type { Clock } from '../../src/picture/pace.ts';

/** A clock that stands still until a test moves it. */
export class HandClock implements Clock {
  #now = 0;
  #alarms: { at: number; run: () => void }[] = [];

  now(): number {
    return this.#now;
  }

  after(milliseconds: number, run: () => void): void {
    this.#alarms.push({ at: this.#now + milliseconds, run });
  }

  pass(milliseconds: number): void {
    const until = this.#now + milliseconds;
    for (;;) {
      const next = this.#alarms.filter(({ at }) => at <= until).sort((a, b) => a.at - b.at)[0];
      if (!next) break;
      this.#alarms = this.#alarms.filter((alarm) => alarm !== next);
      this.#now = next.at;
      next.run();
    }
    this.#now = until;
  }
}
