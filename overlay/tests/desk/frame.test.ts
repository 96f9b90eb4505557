import { describe, expect, test } from 'vitest';
import {
  corners,
  dragged,
  draggedSquare,
  firstFrame,
  isSquare,
  least,
  pictureAspect,
  withNumber,
} from '../../src/desk/scenes/frame.ts';
import type { Frame } from '../../src/wire.ts';

const frame: Frame = { left: 0.2, top: 0.2, width: 0.4, height: 0.5 };
const square: Frame = { left: 0.2, top: 0.2, width: 0.5 / pictureAspect, height: 0.5 };
const far = [-2, -0.3, -0.01, 0, 0.01, 0.3, 2];

/** In percent: left, top, width, height. */
const said = ({ left, top, width, height }: Frame) =>
  [left, top, width, height].map((share) => Math.round(share * 1000) / 10).join(' ');

test.each([
  ['body', '30 10 40 50'],
  ['topLeft', '30 10 30 60'],
  ['topRight', '20 10 50 60'],
  ['bottomLeft', '30 20 30 40'],
  ['bottomRight', '20 20 50 40'],
] as const)('%s dragged right and up by a tenth', (grip, expected) => {
  expect(said(dragged(frame, grip, 0.1, -0.1))).toBe(expected);
});

test('a body stops at the edges and keeps its size', () => {
  expect(said(dragged(frame, 'body', -1, 1))).toBe('0 50 40 50');
});

test('a corner stops at the edge of the picture and before the opposite corner', () => {
  expect(said(dragged(frame, 'bottomRight', 1, 1))).toBe('20 20 80 80');
  expect(said(dragged(frame, 'bottomRight', -1, -1))).toBe('20 20 5 5');
  expect(said(dragged(frame, 'topLeft', 1, 1))).toBe('55 65 5 5');
});

describe.each(['body', ...corners] as const)('however far %s is dragged', (grip) => {
  const results = far.flatMap((right) => far.map((down) => ({ right, down })));

  test.each([
    ['freely', dragged, frame],
    ['square', draggedSquare, square],
  ] as const)('the frame stays inside and large enough (%s)', (_, drag, from) => {
    for (const { right, down } of results) {
      const { left, top, width, height } = drag(from, grip, right, down);
      expect(Math.min(left, top)).toBeGreaterThanOrEqual(-1e-12);
      expect(Math.max(left + width, top + height)).toBeLessThanOrEqual(1 + 1e-12);
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(least - 1e-12);
    }
  });

  test('a square board stays square', () => {
    for (const { right, down } of results)
      expect(isSquare(draggedSquare(square, grip, right, down))).toBe(true);
  });
});

test('a corner of a square follows a pointer that goes along the diagonal', () => {
  const { height } = draggedSquare(square, 'bottomRight', 0.09 / pictureAspect, 0.09);
  expect(height).toBeCloseTo(0.59, 12);

  expect(draggedSquare(square, 'topLeft', 0.09 / pictureAspect, 0.09).height).toBeCloseTo(0.41, 12);
});

test('the corner opposite to the grip stays where it is', () => {
  const bottomRight = ({ left, top, width, height }: Frame) => [left + width, top + height];
  const [x = 0, y = 0] = bottomRight(square);
  const [nextX, nextY] = bottomRight(draggedSquare(square, 'topLeft', 0.05, -0.07));

  expect(nextX).toBeCloseTo(x, 12);
  expect(nextY).toBeCloseTo(y, 12);
});

test('a number set by hand is brought back inside', () => {
  expect(said(withNumber(frame, 'left', 0.9))).toBe('60 20 40 50');
  expect(said(withNumber(frame, 'width', 0.9))).toBe('10 20 90 50');
  expect(said(withNumber(frame, 'height', 0))).toBe('20 20 40 5');
  expect(said(withNumber(frame, 'top', -3))).toBe('20 0 40 50');
});

test('a scene that was never placed begins with a square inside the safe area', () => {
  expect(isSquare(firstFrame)).toBe(true);
  expect(Math.min(firstFrame.left, firstFrame.top)).toBeGreaterThan(0.05);
  expect(Math.max(firstFrame.left + firstFrame.width, firstFrame.top + firstFrame.height)).toBeLessThan(0.95);
});
