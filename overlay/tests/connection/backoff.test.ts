import { expect, test } from 'vitest';
import { longestWait, waitBefore } from '../../src/connection/backoff.ts';

const almostOne = 1 - Number.EPSILON;

test('the first try comes at once, whatever chance says', () => {
  expect(waitBefore(0, 0)).toBe(0);
  expect(waitBefore(0, almostOne)).toBe(0);
});

test('the jitter is full: chance decides between nothing and the ceiling', () => {
  expect(waitBefore(3, 0)).toBe(0);
  expect(waitBefore(3, 0.5)).toBe(1000);
  expect(waitBefore(3, almostOne)).toBeCloseTo(2000);
});

test('the ceiling doubles until it is as long as a wait may be', () => {
  const ceilings = [1, 2, 3, 4, 5, 6, 7].map((attempt) => Math.round(waitBefore(attempt, almostOne)));

  expect(ceilings).toEqual([500, 1000, 2000, 4000, 5000, 5000, 5000]);
});

test('it never gives up and never waits longer', () => {
  for (const attempt of [10, 1_000, 1_000_000, Number.MAX_SAFE_INTEGER]) {
    expect(waitBefore(attempt, almostOne)).toBeGreaterThan(0);
    expect(waitBefore(attempt, almostOne)).toBeLessThanOrEqual(longestWait);
  }
});
