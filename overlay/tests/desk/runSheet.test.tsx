import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { clock } from '../../src/desk/plan/clock.ts';
import type { PointFacts, RunSheet, StepLine } from '../../src/wirePlan.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

const step = (number: number, said: Partial<StepLine> = {}): StepLine => ({
  number,
  at: number * 40,
  seconds: 40,
  rule: 'hidden-single',
  name: 'hidden single',
  places: [{ cell: `r1c${number}`, digit: 5 }],
  removes: [],
  isGate: false,
  isFeatured: false,
  short: `step ${number}`,
  text: '',
  ...said,
});

const sheet: RunSheet = {
  grid: '.'.repeat(81),
  isComplete: true,
  seconds: 125.5,
  passages: [
    { title: 'Singles in row 1', first: 1, last: 2, at: 0, seconds: 80 },
    { title: 'Singles in row 2', first: 3, last: 3, at: 80, seconds: 40 },
    { title: 'Featured: XY-wing', first: 4, last: 4, at: 120, seconds: 5.5 },
  ],
  steps: [
    step(1),
    step(2, { isGate: true }),
    step(3),
    step(4, { isFeatured: true, places: [], removes: [{ cell: 'r4c5', digit: 4 }] }),
  ],
  featured: [
    {
      rule: 'xy-wing',
      name: 'XY-wing',
      step: 4,
      others: [{ cells: ['r1c1', 'r2c2'], places: [], removes: [{ cell: 'r4c5', digit: 4 }], fromStep: 2, toStep: 3 }],
    },
  ],
  talkingPoints: [
    { step: 4, oneIn: 5, text: 'One puzzle in 5 needs XY-wing.', facts: facts({ kind: 'needs', rule: 'xy-wing' }) },
    { step: null, oneIn: null, text: 'Block 6 is busy.', facts: facts({ kind: 'busiest-block', houses: ['block 6'] }) },
  ],
};

function facts(said: Partial<PointFacts>): PointFacts {
  return { kind: '', cells: [], digits: [], houses: [], rule: null, count: null, outOf: null, ...said };
}

beforeEach(() => {
  shown = new ShownDesk();
  shown.take({ featured: [{ rule: 'xy-wing', isEarly: false }] });
  shown.key('o');
});

afterEach(cleanup);

const take = (said = {}) =>
  act(() =>
    shown.model.plan.take({
      sequence: 1,
      plannedOf: 1,
      blocked: null,
      sheet,
      notes: ['', '', 'Slowly', ''],
      done: [],
      kept: [],
      ...said,
    }),
  );
const lines = (selector: string) => shown.all(selector).map((each) => each.textContent);

test('the way is told by passages with their clock, and what is marked is marked in words', () => {
  take();

  expect(lines('.way')).toEqual(['4 steps from here, 2:05 of speaking.']);
  expect(lines('.passages summary')).toEqual([
    '0:00nowgateSingles in row 1steps 1 to 2, 1:20',
    '1:20Singles in row 2step 3, 0:40',
    '2:00featuredFeatured: XY-wingstep 4, 0:05',
  ]);
  expect(lines('.turns li')).toEqual(['featured XY-wing: step 4; also open: r1c1 r2c2, which takes out 4, before steps 2 to 3.']);
  expect(lines('.passages .point')).toEqual(['One puzzle in 5 needs XY-wing.']);
  expect(lines('[aria-current="step"] .short')).toEqual(['step 1']);
});

test('a note is written at its step and sent with what the step concludes', async () => {
  take();
  expect(lines('.step-note q')).toEqual(['Slowly']);

  fireEvent.click(shown.at('[aria-label="Note at step 4"]'));
  fireEvent.input(shown.at('.step-note input'), { target: { value: 'The star' } });
  await shown.submit('form.step-note');
  expect(shown.made).toEqual(['NoteStep "" "r4c5=4" "The star"']);
  expect(lines('.step-note input')).toEqual([]);
});

test('what is not planned yet, cannot be planned, or is planned anew is said so', () => {
  expect(lines('.way')).toEqual(['The way on is being planned.']);

  take({ sheet: null, blocked: 'There is no way on.', notes: [] });
  expect(lines('.way')).toEqual(['There is no way on.']);

  take({ sheet: { ...sheet, isComplete: false } });
  expect(lines('.way')[0]).toContain('The ladder leads no further than that.');

  shown.take({ scanOf: 2 });
  expect(lines('.way')[0]).toContain('It is being planned anew.');
});

test('a featured rule that is not on the way any more was shown, and is named', () => {
  take({ sheet: { ...sheet, featured: [] } });

  expect(lines('.turns li')).toEqual(['xy-wing: shown already.']);
});

test('steps done are listed at the head, folded, with their time, how they follow and their notes', () => {
  take({
    done: [
      {
        text: '6 in r3c2',
        at: '2026-11-30T20:05:00',
        how: 'is a hidden single',
        notes: ['Thank the setter'],
      },
      { text: 'XY-wing r1c1 r2c2', at: null, how: 'was said or shown', notes: [] },
    ],
  });

  expect(lines('.done-steps summary')).toEqual(['done2 steps1 with a note']);
  expect(shown.at('.done-steps').hasAttribute('open')).toBe(false);
  expect(lines('.done-steps li')).toEqual([
    '20:056 in r3c2 is a hidden singleThank the setter',
    'XY-wing r1c1 r2c2 was said or shown',
  ]);
});

test('a note whose step is not on the way any more is kept in sight, and can be taken away', () => {
  take({ kept: [{ places: [], removes: [{ cell: 'r4c5', digit: 4 }], text: 'The star' }] });

  expect(lines('.kept-notes li')).toEqual(['no 4 in r4c5The starTake away']);
  fireEvent.click(shown.button('Take away', '.kept-notes'));
  expect(shown.made).toEqual(['NoteStep "" "r4c5=4" ""']);
});

test.each([
  [0, '0:00'],
  [65.9, '1:05'],
  [600, '10:00'],
])('%d seconds are %s', (seconds, words) => {
  expect(clock(seconds)).toBe(words);
});
