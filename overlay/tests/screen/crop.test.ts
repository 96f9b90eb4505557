import { expect, test } from 'vitest';
import { changedBox } from '../../src/screen/crop.ts';

const width = 5;

/** A picture of five by four pixels, black but for those. */
const picture = (...lit: number[]) => new Uint32Array(20).map((_, at) => (lit.includes(at) ? 0xffffffff : 0));

test('the same picture twice has changed nowhere', () => {
  expect(changedBox(picture(7), picture(7), width)).toBeNull();
});

test.each([
  [[0], { left: 0, top: 0, width: 1, height: 1 }],
  [[19], { left: 4, top: 3, width: 1, height: 1 }],
  [[8, 11], { left: 1, top: 1, width: 3, height: 2 }],
  [[0, 19], { left: 0, top: 0, width: 5, height: 4 }],
] as const)('pixels %s have one box around them', (lit, box) => {
  expect(changedBox(picture(...lit), picture(), width)).toEqual(box);
  expect(changedBox(picture(), picture(...lit), width)).toEqual(box);
});
