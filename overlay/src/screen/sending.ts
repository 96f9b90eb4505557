import { allOf, type Crop, hasSize } from './crop.ts';
import type { Sent } from './post.ts';

/** What is sent of one picture after the other: what has changed since the last one that the server has read. */
export class Sending {
  #last: { crop: Crop; sent: Sent } | null = null;
  #number = 0;

  /** The last one that the server has read, with the grid's corners in it. */
  get last(): { crop: Crop; corners: readonly number[] } | null {
    return this.#last && { crop: this.#last.crop, corners: this.#last.sent.corners };
  }

  /** A picture as it is sent; null where the browser makes no file of it. */
  async pack(crop: Crop, corners: readonly number[]): Promise<Sent | null> {
    const last = this.#last && hasSize(this.#last.crop.size, crop.size) ? this.#last : null;
    const number = ++this.#number;
    const part = last ? crop.changedSince(last.crop) : allOf(crop.size);
    const file = part ? await crop.file('image/png', part) : new Blob();
    const change = last && { of: last.sent.number, left: part?.left ?? 0, top: part?.top ?? 0 };
    return file && { number, corners, change, file };
  }

  /** The server has read it. */
  arrived(crop: Crop, sent: Sent): void {
    this.#last = { crop, sent };
  }

  /** The next one is sent as a whole. */
  forget(): void {
    this.#last = null;
  }
}
