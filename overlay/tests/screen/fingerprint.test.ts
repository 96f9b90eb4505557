import { expect, test } from 'vitest';
import { differs, fingerprintOf, sampleSide } from '../../src/screen/fingerprint.ts';

const blank = () => new Uint8Array(sampleSide * sampleSide).fill(240);

/** A picture with a rectangle painted in. */
function painted(left: number, top: number, width: number, height: number, value: number): Uint8Array {
  const picture = blank();
  for (let y = top; y < top + height; y++)
    for (let x = left; x < left + width; x++) picture[y * sampleSide + x] = value;
  return picture;
}

test('the same picture differs in nothing', () => {
  expect(differs(blank(), blank())).toBe(false);
});

test('a small mark anywhere is seen', () => {
  // A mark of a seventh of a cell's height, drawn in lines of a quarter of its own width.
  for (const at of [0, 3, 17, 70, sampleSide - 2])
    expect(differs(blank(), painted(at, at, 1, 2, 60))).toBe(true);
});

test('a thin line through a mark is seen wherever it lies', () => {
  // A line of one screen pixel through a 2 of twelve, as a browser samples it.
  const darker = [
    [0, 0, 12, 5],
    [0, 0, 10, 3],
    [14, 6, 0, 0],
    [6, 1, 0, 0],
  ];
  for (const at of [0, 1, 2, 3, 18, 71]) {
    const struck = blank();
    for (const [y, row] of darker.entries())
      for (const [x, by] of row.entries()) struck[(at + y) * sampleSide + at + x] = 240 - by;
    expect(differs(blank(), struck)).toBe(true);
  }
});

test('noise is not seen, not even everywhere', () => {
  const noisy = blank().map((value, at) => value + ((at * 7919) % 9) - 4);
  expect(differs(blank(), noisy)).toBe(false);
});

test('pictures of different sizes differ', () => {
  expect(differs(blank(), new Uint8Array(4))).toBe(true);
});

test('colours of equal brightness have different values', () => {
  const [red, green] = [
    fingerprintOf(new Uint8ClampedArray([255, 0, 0, 255])),
    fingerprintOf(new Uint8ClampedArray([0, 255, 0, 255])),
  ];
  expect(red).not.toEqual(green);
});
