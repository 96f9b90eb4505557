import { expect, test } from 'vitest';
import { merged, moved, retitled, split } from '../../src/desk/shows/edits.ts';
import { timeOf, timeText } from '../../src/grid/time.ts';

const marks = [
  { at: 0, title: 'A' },
  { at: 30, title: 'B' },
  { at: 90, title: 'C' },
];

test('a chapter is retitled, and the others stay', () => {
  expect(retitled(marks, 1, 'New').map(({ title }) => title)).toEqual(['A', 'New', 'C']);
});

test('a chapter moves between its neighbours, and the first not at all', () => {
  expect(moved(marks, 1, 45, 120).map(({ at }) => at)).toEqual([0, 45, 90]);
  expect(moved(marks, 1, 500, 120).map(({ at }) => at)).toEqual([0, 89, 90]);
  expect(moved(marks, 1, 0, 120).map(({ at }) => at)).toEqual([0, 1, 90]);
  expect(moved(marks, 2, 500, 120).map(({ at }) => at)).toEqual([0, 30, 119]);
  expect(moved(marks, 0, 20, 120)).toEqual(marks);
});

test('a chapter merges with the one before it, and the first with the one behind it', () => {
  expect(merged(marks, 1)).toEqual([marks[0], marks[2]]);
  expect(merged(marks, 0)).toEqual([marks[0], marks[2]]);
  expect(merged(marks.slice(0, 1), 0)).toEqual(marks.slice(0, 1));
});

test('a chapter splits in its middle', () => {
  expect(split(marks, 1, 120).map(({ at }) => at)).toEqual([0, 30, 60, 90]);
  expect(split(marks, 2, 120).map(({ at }) => at)).toEqual([0, 30, 90, 105]);
  expect(split([{ at: 0, title: 'A' }], 0, 1)).toHaveLength(2);
});

test.each([
  ['0:00', 0],
  ['1:05', 65],
  ['1:02:03', 3723],
  ['75', 75],
  ['1:05.5', 65.5],
])('%s is a time', (text, seconds) => {
  expect(timeOf(text)).toBe(seconds);
  expect(timeOf(timeText(seconds))).toBe(Math.floor(seconds));
});

test.each(['', 'soon', '1:75', '1:75:00', '-3', '1:2:3:4'])('"%s" is no time', (text) => {
  expect(timeOf(text)).toBeNull();
});
