import { expect, test } from 'vitest';
import { Slowness } from '../../src/screen/slowness.ts';

const beats = (...times: number[]) => {
  const slowness = new Slowness();
  return times.map((now) => slowness.beat(now));
};

test('some thirty beats a second are as they should be, with a hiccup or two', () => {
  expect(beats(0, 33, 66, 1200, 1233, 3000, 4500, 4533)).not.toContain(true);
});

test('one a second again and again is slow', () => {
  expect(beats(0, 1000, 2000, 3000, 4000)).toEqual([false, false, false, true, true]);
});
