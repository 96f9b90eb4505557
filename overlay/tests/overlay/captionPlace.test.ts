import { describe, expect, test } from 'vitest';
import { placeCaption, safe } from '../../src/overlay/captionPlace.ts';
import type { Frame } from '../../src/wire.ts';

const wide = 16 / 9;
const sideOf = (frame: Frame, letters: number, aspect = wide) => placeCaption(frame, letters, aspect).side;

test('words go below the board where there is room', () => {
  expect(sideOf({ left: 0.3, top: 0.05, width: 0.4, height: 0.7 }, 30)).toBe('below');
});

test('else above it', () => {
  expect(sideOf({ left: 0.3, top: 0.25, width: 0.4, height: 0.7 }, 30)).toBe('above');
});

test('else beside it, on the wider side', () => {
  expect(sideOf({ left: 0.04, top: 0.06, width: 0.495, height: 0.88 }, 30)).toBe('right');
  expect(sideOf({ left: 0.46, top: 0.06, width: 0.495, height: 0.88 }, 30)).toBe('left');
});

test('else over its foot', () => {
  expect(sideOf({ left: 0, top: 0, width: 1, height: 1 }, 30)).toBe('over');
});

test('many words go where they fit rather than where few would stand', () => {
  const frame = { left: 0.04, top: 0.06, width: 0.495, height: 0.78 };

  expect(sideOf(frame, 25)).toBe('below');
  expect(sideOf(frame, 200)).toBe('right');
});

test('a gap too narrow for a word is not a column', () => {
  expect(sideOf({ left: 0.12, top: 0.02, width: 0.76, height: 0.96 }, 10)).toBe('over');
});

describe.each([16 / 9, 4 / 3, 9 / 16])('in a picture %f wide for its height', (aspect) => {
  const places = [0, 0.1, 0.3, 0.5].flatMap((left) =>
    [0, 0.1, 0.4].flatMap((top) =>
      [10, 60, 240].map((letters) => placeCaption({ left, top, width: 0.5, height: 0.6 }, letters, aspect)),
    ),
  );

  test('words keep inside the safe area', () => {
    for (const { left, top, width, height } of places) {
      expect(left).toBeGreaterThanOrEqual(safe - 1e-9);
      expect(top).toBeGreaterThanOrEqual(safe - 1e-9);
      expect(left + width).toBeLessThanOrEqual(1 - safe + 1e-9);
      expect(top + height).toBeLessThanOrEqual(1 - safe + 1e-9);
    }
  });
});

test('only words over its foot touch the board', () => {
  const board = { left: 0.3, top: 0.15, width: 0.4, height: 0.6 };
  for (const letters of [5, 50, 150, 400]) {
    const { side, left, top, width, height } = placeCaption(board, letters, wide);
    const isBeside = left >= board.left + board.width || left + width <= board.left;
    const isAboveOrBelow = top >= board.top + board.height || top + height <= board.top;
    expect(side === 'over' || isBeside || isAboveOrBelow).toBe(true);
  }
});
