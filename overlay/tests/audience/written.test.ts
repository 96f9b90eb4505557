import { expect, test } from 'vitest';
import { viewerId } from '../../src/audience/viewerId.ts';
import { cellsWritten } from '../../src/audience/written.ts';
import { cellNamed } from '../../src/grid/cells.ts';
import { stageCell } from '../drawn.ts';
import { boardView } from './shown.ts';

const at = (name: string) => cellNamed(name) ?? -1;

test('a board that came as text is what was written', () => {
  const cells = cellsWritten(
    boardView({
      placed: { r2c2: 6 },
      lists: 'r1c2:48 r9c1:1',
      blockMarks: 'r2c5:1 r3c5:12',
      struck: 'r1c2:8',
    }),
  );

  expect(cells).toHaveLength(81);
  expect(cells[at('r1c1')]).toEqual(stageCell({ digit: 1, isGiven: true }));
  expect(cells[at('r2c2')]).toEqual(stageCell({ digit: 6 }));
  expect(cells[at('r1c2')]).toEqual(stageCell({ cellMark: [4, 8], struck: [8] }));
  expect(cells[at('r3c5')]).toEqual(stageCell({ blockMarks: [1, 2] }));
  expect(cells[at('r5c5')]).toEqual(stageCell());
});

test('a tab is known again by 16 bytes of chance, which it keeps', () => {
  const kept = new Map<string, string>();
  const store = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
  };
  const first = viewerId(store as unknown as Storage, (bytes) => bytes.fill(251));

  expect(first).toBe('-_v7-_v7-_v7-_v7-_v7-w');
  expect(viewerId(store as unknown as Storage)).toBe(first);
  expect(viewerId(null)).toMatch(/^[\w-]{22}$/);
  expect(viewerId(null)).not.toBe(viewerId(null));
});
