import { expect, test } from 'vitest';
import { brokenRectangle, dashCount, fitted, strokeDashes } from '../../src/picture/dashes.ts';

const dashes = { dash: 0.3, gap: 0.2 };

test('dashes are stretched until a line holds a whole number of them', () => {
  const { dash, gap } = fitted(dashes, 2.2);

  expect(dashCount(dashes, 2.2)).toBe(4);
  expect(4 * (dash + gap)).toBeCloseTo(2.2);
  expect(dash / gap).toBeCloseTo(1.5);
});

test('a line shorter than a dash still has one', () => {
  expect(dashCount(dashes, 0.05)).toBe(1);
});

test('square ends lengthen a dash by the width of its line, so it is drawn shorter', () => {
  const { 'stroke-dasharray': array, 'stroke-dashoffset': offset } = strokeDashes(dashes, 0.06);
  const [drawn, blank] = array.split(' ').map(Number);

  expect(drawn).toBeCloseTo(0.24);
  expect(blank).toBeCloseTo(0.26);
  // Half of the blank is left when the line begins, so it begins in the middle of a gap.
  expect((drawn ?? 0) + (blank ?? 0) - offset).toBeCloseTo((blank ?? 0) / 2);
});

test('a broken rectangle has a bent dash at each corner and whole ones between', () => {
  const path = brokenRectangle(0, 0, 1, 2, dashes, 0);

  expect(path.match(/M[^M]*H[^M]*V[^M]*/g)?.length).toBe(4);
  // One dash between the corners above and below, three at each side.
  expect(path.match(/M[^M]*h[^M]*/g)?.length).toBe(2);
  expect(path.match(/M[^M]*v[^M]*/g)?.length).toBe(6);
  expect(path).toMatch(/^M0\.15 0H0V0\.15/);
});
