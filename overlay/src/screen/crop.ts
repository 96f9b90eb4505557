import type { Box, Size } from './corners.ts';

/** A part of the screen as it was at one moment, in memory alone. */
export interface Crop {
  readonly size: Size;
  /** The part of it that looks different from another one of the same size; null where nothing does. */
  changedSince(other: Crop): Box | null;
  /** A part of it as a file; null where the browser failed to make one. */
  file(type: 'image/png' | 'image/jpeg', part: Box): Promise<Blob | null>;
  /** Draws a part of it over a whole canvas. */
  drawOn(canvas: HTMLCanvasElement, part: Box): void;
}

/** All of a picture. */
export const allOf = ({ width, height }: Size): Box => ({ left: 0, top: 0, width, height });

export const hasSize = (one: Size, other: Size) => one.width === other.width && one.height === other.height;

/** What surrounds all pixels in which two pictures of one size differ; null where they are the same. One number a pixel, row by row. */
export function changedBox(one: Uint32Array, other: Uint32Array, width: number): Box | null {
  let [left, right, top, bottom] = [width, -1, -1, -1];
  for (let at = 0; at < one.length; at++) {
    if (one[at] === other[at]) continue;
    const column = at % width;
    bottom = (at - column) / width;
    if (top < 0) top = bottom;
    if (column < left) left = column;
    if (column > right) right = column;
  }
  return top < 0 ? null : { left, top, width: right - left + 1, height: bottom - top + 1 };
}

/** Drawn on a canvas that stands in no page. */
export class DrawnCrop implements Crop {
  readonly size: Size;
  readonly #canvas: HTMLCanvasElement;
  #pixels: Uint32Array | null = null;

  constructor(canvas: HTMLCanvasElement) {
    this.#canvas = canvas;
    this.size = { width: canvas.width, height: canvas.height };
  }

  changedSince(other: Crop): Box | null {
    if (!(other instanceof DrawnCrop) || !hasSize(this.size, other.size)) return allOf(this.size);
    return changedBox(this.#read(), other.#read(), this.size.width);
  }

  file(type: 'image/png' | 'image/jpeg', part: Box): Promise<Blob | null> {
    const canvas = hasSize(part, this.size) ? this.#canvas : canvasOf(part);
    if (canvas !== this.#canvas) this.drawOn(canvas, part);
    return new Promise((made) => canvas.toBlob(made, type, 0.92));
  }

  drawOn(canvas: HTMLCanvasElement, { left, top, width, height }: Box): void {
    const pen = penOf(canvas);
    pen.drawImage(this.#canvas, left, top, width, height, 0, 0, canvas.width, canvas.height);
  }

  #read(): Uint32Array {
    const { width, height } = this.size;
    this.#pixels ??= new Uint32Array(penOf(this.#canvas).getImageData(0, 0, width, height).data.buffer);
    return this.#pixels;
  }
}

export function canvasOf({ width, height }: Size): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  return canvas;
}

export function penOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new Error('The browser has no canvas.');
  pen.imageSmoothingQuality = 'high';
  return pen;
}
