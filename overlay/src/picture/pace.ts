/**
 * Least time between two pictures that appear, in milliseconds. A flash needs a picture to appear and to go again, so there are
 * never more than three in a second (WCAG 2.2, 2.3.1), whatever keys are pressed.
 */
export const leastBetween = 334;

/** Time, so that tests bring their own. */
export interface Clock {
  now(): number;
  after(milliseconds: number, run: () => void): void;
}

/**
 * Lets a picture appear at once, unless another has just appeared: then the newest one is shown when its time has come. Taking a
 * picture off is never held back.
 */
export class Pace<T> {
  readonly #show: (shown: T) => void;
  readonly #isEmpty: (shown: T) => boolean;
  readonly #clock: Clock;
  #appeared = Number.NEGATIVE_INFINITY;
  #held: { next: T } | null = null;

  constructor(show: (shown: T) => void, isEmpty: (shown: T) => boolean, clock: Clock = realClock) {
    this.#show = show;
    this.#isEmpty = isEmpty;
    this.#clock = clock;
  }

  offer(next: T): void {
    const left = this.#appeared + leastBetween - this.#clock.now();
    if (this.#isEmpty(next) || left <= 0) {
      this.#held = null;
      this.#appear(next);
      return;
    }
    if (!this.#held) this.#clock.after(left, () => this.#release());
    this.#held = { next };
  }

  #release(): void {
    const held = this.#held;
    if (!held) return;
    this.#held = null;
    this.offer(held.next);
  }

  #appear(next: T): void {
    if (!this.#isEmpty(next)) this.#appeared = this.#clock.now();
    this.#show(next);
  }
}

export const realClock: Clock = {
  now: () => performance.now(),
  after: (milliseconds, run) => setTimeout(run, milliseconds),
};
