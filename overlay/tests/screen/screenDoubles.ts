import type { ScreenParts } from '../../src/desk/model/screen.ts';
import type { Capture } from '../../src/screen/capture.ts';
import type { Box, Size } from '../../src/screen/corners.ts';
import type { Crop } from '../../src/screen/crop.ts';
import type { Posted, ScreenPost, Sent } from '../../src/screen/post.ts';
import type { FoundGrid, ScreenView } from '../../src/wireScreen.ts';

/** A screen of 1000 by 800 that shows what the test says, as one brightness. */
export class DrawnCapture implements Capture {
  readonly stream = {} as MediaStream;
  readonly size: Size = { width: 1000, height: 800 };
  readonly taken: string[] = [];
  isReady = true;
  isStopped = false;
  shows = 0;

  fingerprint(): Uint8Array {
    return new Uint8Array(64).fill(this.shows);
  }

  take({ left, top, width, height }: Box, size: Size): Crop {
    this.taken.push(`${left},${top} ${width}x${height} as ${size.width}x${size.height}`);
    return new ShownCrop(size, this.shows);
  }

  stop(): void {
    this.isStopped = true;
  }
}

/** A crop of one brightness. What changes, changes in one place. */
class ShownCrop implements Crop {
  readonly size: Size;
  readonly shows: number;

  constructor(size: Size, shows: number) {
    this.size = size;
    this.shows = shows;
  }

  changedSince(other: Crop): Box | null {
    return (other as ShownCrop).shows === this.shows ? null : { left: 70, top: 80, width: 9, height: 10 };
  }

  file(type: string, { left, top, width, height }: Box): Promise<Blob> {
    return Promise.resolve(new Blob([`${type} of ${width}x${height} at ${left},${top}`]));
  }

  drawOn(): void {}
}

/** Answers as the test says, when the test says so, and writes down what was posted. */
export class ToldPost implements ScreenPost {
  readonly looks: string[] = [];
  /** The numbers of pictures, and what was sent of them. */
  readonly sent: string[] = [];
  finds = 0;
  found: Posted<FoundGrid> = {
    kind: 'answer',
    answer: { corners: [100, 100, 640, 100, 640, 640, 100, 640] },
  };
  #waiting: ((posted: Posted<ScreenView>) => void)[] = [];

  async look(page: string, { number, corners, change, file }: Sent): Promise<Posted<ScreenView>> {
    this.looks.push(`${page} ${corners.map((corner) => Math.round(corner)).join(',')}`);
    const posted = new Promise<Posted<ScreenView>>((resolve) => this.#waiting.push(resolve));
    this.sent.push(`${number}${change ? ` of ${change.of}` : ''}: ${await file.text()}`);
    return posted;
  }

  find(): Promise<Posted<FoundGrid>> {
    this.finds++;
    return Promise.resolve(this.found);
  }

  reply(posted: Posted<ScreenView>): void {
    for (const resolve of this.#waiting.splice(0)) resolve(posted);
  }
}

export const answer = (said: Partial<ScreenView> = {}): Posted<ScreenView> => ({
  kind: 'answer',
  answer: {
    status: 'following',
    again: null,
    held: [],
    otherGivens: null,
    apart: [],
    refusal: null,
    ...said,
  },
});

/** What following needs of the browser, in the hand of the test. */
export class HandScreen implements ScreenParts {
  whyNot: string | null = null;
  readonly page = 'page';
  readonly post = new ToldPost();
  readonly captures: DrawnCapture[] = [];
  refuses = false;
  isReadyAtOnce = true;
  time = 0;
  #calls = new Set<() => void>();
  #ended: () => void = () => {};

  readonly now = () => this.time;

  readonly open = (ended: () => void): Promise<Capture> => {
    if (this.refuses) return Promise.reject(new Error('NotAllowedError'));
    this.#ended = ended;
    this.captures.push(new DrawnCapture());
    this.capture.isReady = this.isReadyAtOnce;
    return Promise.resolve(this.capture);
  };

  readonly beat = (call: () => void) => {
    this.#calls.add(call);
    return () => this.#calls.delete(call);
  };

  get capture(): DrawnCapture {
    const last = this.captures.at(-1);
    if (!last) throw new Error('No screen was chosen.');
    return last;
  }

  get beats(): number {
    return this.#calls.size;
  }

  /** Time goes on, and the page looks. */
  tick(milliseconds = 33): void {
    this.time += milliseconds;
    for (const call of this.#calls) call();
  }

  /** The browser ends showing the screen. */
  end(): void {
    this.#ended();
  }
}
