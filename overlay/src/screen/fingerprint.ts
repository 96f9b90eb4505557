/** A cheap comparison of pictures: has anything changed that could be a digit, a mark or a colour? */

/** The side of the small picture that is compared: 16 pixels a cell. */
export const sampleSide = 144;

/** The side of a tile; small enough that a small mark fills a good part of one. */
const tile = 4;

/** By so much a pixel changes by itself, as captured pictures do; of 255. */
const flicker = 4;

/**
 * What the pixels of a tile change by beyond that, together, where something was drawn: a line of one screen pixel through a small
 * mark covers little of each pixel and may lie in several tiles.
 */
const least = 10;

/** The brightness of each pixel of a picture of `sampleSide` by `sampleSide`, with a share of its colour. */
export function fingerprintOf(pixels: Uint8ClampedArray): Uint8Array {
  const values = new Uint8Array(pixels.length / 4);
  for (let at = 0; at < values.length; at++) {
    const [red = 0, green = 0, blue = 0] = [pixels[at * 4], pixels[at * 4 + 1], pixels[at * 4 + 2]];
    // Not the weights of the eye: selections differ in colour more than in brightness.
    values[at] = (2 * red + 3 * green + 3 * blue) >> 3;
  }
  return values;
}

/** Whether a tile of the two differs by more than pictures do by themselves. */
export function differs(one: Uint8Array, other: Uint8Array): boolean {
  if (one.length !== other.length) return true;
  const side = Math.round(Math.sqrt(one.length));
  for (let top = 0; top < side; top += tile) {
    for (let left = 0; left < side; left += tile) {
      if (changeOf(one, other, side, top, left) >= least) return true;
    }
  }
  return false;
}

function changeOf(one: Uint8Array, other: Uint8Array, side: number, top: number, left: number): number {
  let sum = 0;
  for (let y = top; y < Math.min(top + tile, side); y++) {
    for (let at = y * side + left; at < y * side + Math.min(left + tile, side); at++)
      sum += Math.max(0, Math.abs((one[at] ?? 0) - (other[at] ?? 0)) - flicker);
  }
  return sum;
}
