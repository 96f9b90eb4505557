import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { VetResult } from '../../src/wirePlan.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

const grid = `1${'.'.repeat(80)}`;

const faulty: VetResult = {
  puzzle: grid,
  solutions: 2,
  clues: 1,
  redundant: null,
  symmetries: [],
  hardest: null,
  grade: null,
  rules: [],
  featured: [],
  corrections: [
    { cell: 'r1c1', from: 1, to: 5 },
    { cell: 'r1c2', from: null, to: 3 },
    { cell: 'r1c1', from: 1, to: null },
  ],
  faults: ['There is more than one solution.'],
  sentences: ['There is more than one solution.'],
};

beforeEach(() => {
  shown = new ShownDesk();
  shown.take();
  act(() =>
    shown.model.ladder.take({
      sequence: 1,
      last: null,
      rungs: [
        { rule: 'xy-wing', name: 'XY-wing', family: 'wings', isOn: true },
        { rule: 'x-wing', name: 'X-wing', family: 'fish', isOn: true },
        { rule: 'nets', name: 'nets', family: 'nets', isOn: false },
      ],
      families: [],
    }),
  );
});

afterEach(cleanup);

const type = (text: string) => fireEvent.input(shown.at('textarea'), { target: { value: text } });
const vetted = (result: VetResult = faulty, of = grid) =>
  act(() => shown.model.vet.take({ grid: of, result }));
const lines = (selector: string) => shown.all(selector).map((each) => each.textContent);
const choose = (label: string, value: string) =>
  fireEvent.change(shown.at(`select[aria-label="${label}"]`), { target: { value } });

test('the grid that is typed is vetted, and what was found out stands below', () => {
  shown.key('l');
  expect(shown.button('Vet it').disabled).toBe(true);
  type(grid);
  fireEvent.click(shown.button('Vet it'));
  expect(shown.made).toEqual([`Vet "${grid}" []`]);
  expect(lines('.vetted p')).toEqual(['Vetting: this takes a few seconds.']);

  vetted();
  expect(lines('.vetted h3')).toEqual(['✗ No sound puzzle']);
  expect(lines('.vetted li')).toEqual(faulty.sentences);
  expect(lines('.corrections button')).toEqual(['Make r1c1 5', 'Write 3 into r1c2', 'Take 1 out of r1c1']);
});

test('a correction is written into the grid, which is vetted again', () => {
  shown.key('l');
  type(grid);
  fireEvent.click(shown.button('Vet it'));
  vetted();
  fireEvent.click(shown.button('Make r1c1 5'));

  const lines = ['5........', ...Array.from({ length: 8 }, () => '.........')];
  expect((shown.at('textarea') as HTMLTextAreaElement).value).toBe(lines.join('\n'));
  expect(shown.made.at(-1)).toBe(`Vet ${JSON.stringify(lines.join('\n'))} []`);
});

test('what was found out about another grid is not shown', () => {
  shown.key('l');
  type(grid);
  fireEvent.click(shown.button('Vet it'));
  vetted(faulty, 'another');
  expect(lines('.vetted li')).toEqual([]);

  vetted();
  type(`${grid} `);
  expect(shown.at('.vetted').textContent).toBe('');
});

test('a refusal is said where the findings would stand', async () => {
  shown.desk.calls.refusals.set('Vet', 'Ask again in a moment.');
  shown.key('l');
  type(grid);
  await act(async () => void fireEvent.click(shown.button('Vet it')));

  expect(lines('.vetted p')).toEqual(['Ask again in a moment.']);
});

test('rules are featured with the puzzle that is loaded, and vetting says whether they are needed', async () => {
  shown.key('l');
  type(grid);
  choose('Feature another rule', 'xy-wing');
  choose('When to show XY-wing', 'early');
  fireEvent.click(shown.button('Vet it'));
  await shown.submit('dialog form');

  expect(shown.made).toEqual([
    `Vet "${grid}" ["xy-wing"]`,
    `LoadPuzzle "${grid}" "" "" ""`,
    'FeatureRules [{"rule":"xy-wing","isEarly":true}]',
  ]);
});

test('O opens the run sheet, where rules are featured and taken out', () => {
  shown.take({ featured: [{ rule: 'xy-wing', isEarly: false }] });
  shown.key('o');
  expect(lines('.run-sheet-area h2')).toEqual(['Run sheet']);
  expect(lines('select[aria-label="Feature another rule"] option')).toEqual(['Feature a rule …', 'X-wing']);

  choose('Feature another rule', 'x-wing');
  fireEvent.click(shown.button('Take out'));
  expect(shown.made).toEqual([
    'FeatureRules [{"rule":"xy-wing","isEarly":false},{"rule":"x-wing","isEarly":false}]',
    'FeatureRules []',
  ]);
});

test('a co-host sees what is featured and cannot change it', () => {
  shown.take({ role: 'coHost', featured: [{ rule: 'xy-wing', isEarly: true }] });
  shown.key('o');

  expect(shown.at('fieldset.featured-rules').hasAttribute('disabled')).toBe(true);
  expect(lines('.featured-rules b')).toEqual(['XY-wing']);
});
