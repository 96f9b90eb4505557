import { type ReadonlySignal, signal } from '@preact/signals';
import type { Picture } from '../wirePicture.ts';
import { type Clock, Pace, realClock } from './pace.ts';

/** A picture that nobody can take off any more, as the server is away, goes by itself after this time, in milliseconds. */
const longestAlone = 5000;

/** The picture that a page on air shows, changed no faster than the pace allows. */
export class ShownPicture {
  readonly #picture = signal<Picture | null>(null);
  readonly #pace: Pace<Picture | null>;
  readonly #clock: Clock;
  #last = '';
  /** Changes with everything that happens, so that a loss counts only if nothing happened since. */
  #happened = 0;

  constructor(clock: Clock = realClock) {
    this.#clock = clock;
    const show = (picture: Picture | null) => {
      this.#picture.value = picture;
    };
    this.#pace = new Pace(show, (picture) => picture === null, clock);
  }

  get picture(): ReadonlySignal<Picture | null> {
    return this.#picture;
  }

  /** A view repeats its picture whenever something else in it changes; only another picture counts as a change. */
  offer(picture: Picture | null): void {
    this.#happened += 1;
    const text = JSON.stringify(picture);
    if (text === this.#last) return;
    this.#last = text;
    this.#pace.offer(picture);
  }

  /** The line is down. */
  lose(): void {
    this.#happened += 1;
    const loss = this.#happened;
    this.#clock.after(longestAlone, () => {
      if (loss === this.#happened) this.offer(null);
    });
  }
}
