import { expect, test } from 'vitest';
import { find, groupByRule } from '../../src/desk/model/finder.ts';
import { deduction } from '../drawn.ts';

const single = deduction('1', { short: 'r5c5 is 5', places: [{ cell: 'r5c5', digit: 5 }] });
const wing = deduction('2', {
  rule: 'xy-wing',
  name: 'XY-wing',
  short: 'pivot r4c2: 9 out of r1c8',
  cells: [{ cell: 'r4c2', role: 'pivot' }],
  removes: [{ cell: 'r1c8', digit: 9 }],
});
const other = deduction('3', { short: 'r1c8 is 2' });
const all = [single, other, wing];

const found = (text: string, rule = '') => find(all, text, rule).map(({ id }) => id);

test('without a filter everything is found', () => {
  expect(found('')).toEqual(['1', '3', '2']);
  expect(found('   ')).toEqual(['1', '3', '2']);
});

test.each([
  ['wing', ['2']],
  ['WING', ['2']],
  ['naked', ['1', '3']],
  ['r4c2', ['2']],
  ['r1c8', ['3', '2']],
  ['r1c8 wing', ['2']],
  ['wing r5c5', []],
])('"%s" is looked for in names, cells and candidates, every word of it', (text, ids) => {
  expect(found(text)).toEqual(ids);
});

test('a rule narrows the list on its own and together with words', () => {
  expect(found('', 'naked-single')).toEqual(['1', '3']);
  expect(found('r1c8', 'naked-single')).toEqual(['3']);
});

test('groups come in ladder order, and so do the deductions in them', () => {
  const groups = groupByRule([single, wing, other]);

  expect(groups.map(({ name, deductions }) => [name, ...deductions.map(({ id }) => id)].join(' '))).toEqual([
    'naked single 1 3',
    'XY-wing 2',
  ]);
});
