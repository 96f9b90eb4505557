import { describe, expect, test } from 'vitest';
import {
  boxOf,
  type Corners,
  cellBox,
  firstCorners,
  foundCorners,
  inSent,
  leastSide,
  moved,
  sentSize,
} from '../../src/screen/corners.ts';

const size = { width: 1000, height: 800 };
const corners: Corners = [
  { x: 100, y: 100 },
  { x: 640, y: 100 },
  { x: 640, y: 640 },
  { x: 100, y: 640 },
];
const said = (each: Corners) => each.map(({ x, y }) => `${x},${y}`).join(' ');

test('a grid that was not found begins as a square in the middle', () => {
  expect(said(firstCorners(size))).toBe('180,80 820,80 820,720 180,720');
});

test('corners found in a smaller picture are those of the whole one', () => {
  expect(foundCorners([50, 50, 320, 50, 320, 320, 50, 320], 0.5)).toEqual(corners);
  expect(foundCorners([1, 2, 3], 1)).toBeNull();
});

test.each([
  [0, '103,102 640,100 640,640 100,640'],
  [1, '100,100 643,102 640,640 100,640'],
  [2, '100,100 640,100 643,642 100,640'],
  [3, '100,100 640,100 640,640 103,642'],
])('corner %s moves alone', (index, expected) => {
  expect(said(moved(corners, index, 3, 2, size))).toBe(expected);
});

describe.each([0, 1, 2, 3])('however far corner %s is moved', (index) => {
  test('it stays in the picture and on its own side', () => {
    for (const right of [-5000, -400, 400, 5000]) {
      for (const down of [-5000, -400, 400, 5000]) {
        const [a, b, c, d] = moved(corners, index, right, down, size);
        for (const { x, y } of [a, b, c, d]) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(size.width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(size.height);
        }
        expect(Math.min(b.x, c.x) - Math.max(a.x, d.x)).toBeGreaterThanOrEqual(leastSide);
        expect(Math.min(c.y, d.y) - Math.max(a.y, b.y)).toBeGreaterThanOrEqual(leastSide);
      }
    }
  });
});

test('what is sent is the grid with a little round it, inside the picture', () => {
  expect(boxOf(corners, size)).toEqual({ left: 77, top: 77, width: 586, height: 586 });
  expect(boxOf(firstCorners({ width: 400, height: 400 }), { width: 400, height: 400 }).left).toBe(26);
  const wide = moved(corners, 2, 5000, 5000, size);
  expect(boxOf(wide, size)).toEqual({ left: 62, top: 62, width: 938, height: 738 });
});

test('it is sent no larger than it need be, and never enlarged', () => {
  expect(sentSize({ width: 1170, height: 585 }, 585)).toEqual({ width: 585, height: 293 });
  expect(sentSize({ width: 300, height: 200 }, 585)).toEqual({ width: 300, height: 200 });
});

test('the corners go with it', () => {
  const box = { left: 50, top: 50, width: 1000, height: 1000 };
  expect(inSent(corners, box, { width: 500, height: 500 })).toEqual([25, 25, 295, 25, 295, 295, 25, 295]);
});

test('a cell is a ninth of the way', () => {
  expect(cellBox(0, [10, 20, 100, 20, 100, 110, 10, 110])).toEqual({
    left: 10,
    top: 20,
    width: 10,
    height: 10,
  });
  expect(cellBox(80, [10, 20, 100, 20, 100, 110, 10, 110])).toEqual({
    left: 90,
    top: 100,
    width: 10,
    height: 10,
  });
});
