/** A cheap comparison of pictures: has anything changed that could be a digit, a mark or a colour? */

/** The side of the small picture that is compared: 16 pixels a cell. */
export const sampleSide = 144;

/** The side of a tile; small enough that a small mark fills a good part of one. */
const tile = 4;

/** Below this a tile changes by itself, as captured pictures do. Mean difference of its pixels, of 255. */
const noise = 5;

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

/** Whether a tile of the two differs by more than noise. */
export function differs(one: Uint8Array, other: Uint8Array): boolean {
  if (one.length !== other.length) return true;
  const side = Math.round(Math.sqrt(one.length));
  for (let top = 0; top < side; top += tile) {
    for (let left = 0; left < side; left += tile) {
      if (sumOf(one, other, side, top, left) > noise * tile * tile) return true;
    }
  }
  return false;
}

function sumOf(one: Uint8Array, other: Uint8Array, side: number, top: number, left: number): number {
  let sum = 0;
  for (let y = top; y < Math.min(top + tile, side); y++) {
    for (let at = y * side + left; at < y * side + Math.min(left + tile, side); at++)
      sum += Math.abs((one[at] ?? 0) - (other[at] ?? 0));
  }
  return sum;
}
