import type { TimelineMark } from '../wireReplay.ts';

export const slowest = 0.1;
export const fastest = 1000;

/** The longest wait between two moments while waits are cut short, in seconds. */
const shortWait = 5;

/** Where a replay is, and how it goes on. Knows no clock: time is told to it. */
export class Playback {
  readonly #moments: readonly TimelineMark[];
  readonly #starts: { full: readonly number[]; short: readonly number[] };
  #at = 0;
  #index = 0;
  #cutsWaits = false;

  isPlaying = false;
  speed = 1;

  constructor(moments: readonly TimelineMark[]) {
    this.#moments = moments;
    this.#starts = { full: moments.map(({ at }) => at), short: shortened(moments) };
    this.goTo(0);
  }

  /** The moment that is shown. */
  get moment(): TimelineMark | null {
    return this.#moments[this.#index] ?? null;
  }

  /** Its place, from 0 on. */
  get index(): number {
    return this.#index;
  }

  get count(): number {
    return this.#moments.length;
  }

  get isAtEnd(): boolean {
    return this.#index >= this.#moments.length - 1;
  }

  get cutsWaits(): boolean {
    return this.#cutsWaits;
  }

  /** Time goes on by these seconds of the room's clock. */
  tick(seconds: number): void {
    if (!this.isPlaying) return;
    this.#at += seconds * this.speed;
    while (!this.isAtEnd && (this.#times[this.#index + 1] ?? Infinity) <= this.#at) this.#index += 1;
    if (this.isAtEnd) this.isPlaying = false;
  }

  /** From the end it plays from the beginning. */
  toggle(): void {
    if (!this.isPlaying && this.isAtEnd) this.goTo(0);
    this.isPlaying = !this.isPlaying && this.count > 1;
  }

  step(by: number): void {
    this.isPlaying = false;
    this.goTo(this.#index + by);
  }

  goTo(index: number): void {
    this.#index = Math.min(Math.max(index, 0), Math.max(0, this.count - 1));
    this.#at = this.#times[this.#index] ?? 0;
  }

  /** Twice as fast, or half as fast. */
  faster(by: 1 | -1): void {
    this.setSpeed(by > 0 ? this.speed * 2 : this.speed / 2);
  }

  setSpeed(speed: number): void {
    if (Number.isFinite(speed)) this.speed = Math.min(Math.max(speed, slowest), fastest);
  }

  /** Whether long waits are cut short. */
  cutWaits(on: boolean): void {
    const since = this.#at - (this.#times[this.#index] ?? 0);
    this.#cutsWaits = on;
    this.#at = (this.#times[this.#index] ?? 0) + Math.min(since, on ? shortWait : since);
  }

  get #times(): readonly number[] {
    return this.#cutsWaits ? this.#starts.short : this.#starts.full;
  }
}

function shortened(moments: readonly TimelineMark[]): number[] {
  const times: number[] = [];
  moments.forEach(({ at }, index) => {
    const before = moments[index - 1];
    times.push(before ? (times[index - 1] ?? 0) + Math.min(at - before.at, shortWait) : 0);
  });
  return times;
}
