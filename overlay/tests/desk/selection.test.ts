import { expect, test } from 'vitest';
import { only, type Selection, toggled, withCell } from '../../src/desk/model/selection.ts';
import { cellNamed, nameOf, neighbour } from '../../src/grid/cells.ts';

const cell = (name: string) => cellNamed(name) ?? -1;
/** The cells in words, the cursor first. */
const said = ({ cursor, cells }: Selection) =>
  [nameOf(cursor), ...[...cells].filter((other) => other !== cursor).map(nameOf)].join(' ');

test('cells are added one by one, and the newest is the cursor', () => {
  const selection = withCell(withCell(only(cell('r1c1')), cell('r1c2')), cell('r5c5'));

  expect(said(selection)).toBe('r5c5 r1c1 r1c2');
});

test('a chosen cell is taken out again, and the cursor stays on a chosen one', () => {
  const two = withCell(only(cell('r1c1')), cell('r1c2'));

  expect(said(toggled(two, cell('r1c2')))).toBe('r1c1');
  expect(said(toggled(two, cell('r1c1')))).toBe('r1c2');
});

test('the last cell cannot be taken out: there is always a cursor', () => {
  expect(said(toggled(only(cell('r4c4')), cell('r4c4')))).toBe('r4c4');
});

test.each([
  ['r5c5', -1, 0, 'r4c5'],
  ['r5c5', 0, 1, 'r5c6'],
  ['r1c5', -1, 0, 'r1c5'],
  ['r9c9', 1, 1, 'r9c9'],
  ['r3c1', 0, -1, 'r3c1'],
  ['r3c4', 0, 8, 'r3c9'],
  ['r3c4', 0, -8, 'r3c1'],
])('from %s by %i down and %i right lies %s', (from, down, right, to) => {
  expect(nameOf(neighbour(cell(from), down, right))).toBe(to);
});
