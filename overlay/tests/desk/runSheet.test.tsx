import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Settings } from '../../src/desk/model/settings.ts';
import { clock } from '../../src/desk/plan/clock.ts';
import { deskView } from '../drawn.ts';
import { sheet } from './drawnSheet.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

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
  expect(lines('.features summary')).toEqual(['Featured rulesXY-wing: step 4']);
  expect(lines('.turns li')).toEqual([
    'featured XY-wing: step 4; also open: r1c1 r2c2, which takes out 4, before steps 2 to 3.',
  ]);
  expect(lines('.passages .point')).toEqual(['One puzzle in 5 needs XY-wing.']);
  expect(lines('[aria-current="step"] .short')).toEqual(['step 1']);
});

test('what to say is read at the step that comes now, and at others when asked by the keyboard', () => {
  take();
  expect(lines('.say')).toEqual(['Say step 1.']);

  const third = shown.at('li:not([aria-current]) [aria-expanded="false"]');
  act(() => third.focus());
  fireEvent.click(third);
  expect(third.getAttribute('aria-expanded')).toBe('true');
  expect(lines('.say')).toEqual(['Say step 1.', 'Say step 2.']);

  fireEvent.click(shown.at('[aria-current="step"] .step-line'));
  expect(lines('.say')).toEqual(['Say step 2.']);
});

test('numbers and clock go on from what was done', () => {
  const later = sheet.steps.map((each) => ({ ...each, number: each.number + 6, at: each.at + 200 }));
  const passages = sheet.passages.map((each) => ({
    ...each,
    first: each.first + 6,
    last: each.last + 6,
    at: each.at + 200,
  }));
  take({ sheet: { ...sheet, steps: later, passages, featured: [], talkingPoints: [] } });

  expect(lines('.way')).toEqual(['Step 7 of 10 at 4:00; 2:05 of speaking left.']);
  expect(lines('.passages summary')[0]).toBe('3:20nowgateSingles in row 1steps 7 to 8, 1:20');
  expect(lines('[aria-current="step"] .number')).toEqual(['7']);
  expect(lines('.step q')).toEqual(['Slowly']);
});

const writeAt = (number: number, text: string) => {
  const row = shown.all('.step').find((each) => each.querySelector('.number')?.textContent === `${number}`);
  if (!row) throw new Error(`There is no step ${number}.`);
  if (!row.querySelector('.say')) fireEvent.click(row.querySelector('.step-line') as Element);
  fireEvent.click(row.querySelector('.step-note button') as Element);
  fireEvent.input(shown.at('.step-note input'), { target: { value: text } });
};

test('Enter keeps a note at its step, and the focus stays there', async () => {
  take();
  expect(lines('.step q')).toEqual(['Slowly']);

  writeAt(4, 'The star');
  await shown.submit('form.step-note');

  expect(shown.made).toEqual(['NoteStep "" "r4c5=4" "The star"']);
  expect(lines('.step-note input')).toEqual([]);
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Note at step 4');
});

test('Escape leaves a note as it was, clears no air and closes nothing', () => {
  take();
  writeAt(3, 'Quickly');

  shown.key('Escape', shown.at('.step-note input'));

  expect(shown.made).toEqual([]);
  expect(lines('.step q')).toEqual(['Slowly']);
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Change the note at step 3');
  shown.key('Escape', document.activeElement as Element);
  expect(shown.made).toEqual(['ClearAir']);
});

test('a note is not lost where the focus goes elsewhere', () => {
  take();
  writeAt(1, 'Greet');
  act(() => shown.cellAt('r5c5').focus());

  expect(shown.made).toEqual(['NoteStep "r1c1=5" "" "Greet"']);
  expect(lines('.step-note input')).toEqual([]);
});

const fromThird = { ...sheet, steps: sheet.steps.slice(2), passages: sheet.passages.slice(1) };

test('while a note is written the sheet stands still, though its step is done meanwhile', async () => {
  take();
  writeAt(2, 'Then');
  take({ sheet: fromThird, notes: [] });
  expect(document.activeElement).toBe(shown.at('.step-note input'));
  expect(lines('.way')[0]).toContain('Step 3');

  await shown.submit('form.step-note');
  expect(shown.made).toEqual(['NoteStep "r1c2=5" "" "Then"']);
  expect(document.activeElement?.closest('[aria-current="step"]')?.textContent).toContain('step 3');
});

test('a note that was begun for another puzzle is not kept with this one', () => {
  take();
  writeAt(1, 'Greet');
  const cells = deskView().cells.map((cell) => ({ ...cell, isGiven: false }));
  shown.take({ cells });
  take({ sheet: fromThird, notes: [] });

  expect([lines('.step-note input'), shown.made]).toEqual([[], []]);
});

test('O opens the sheet beside the board with the focus at the step that comes now, goes to it, and closes it from within', () => {
  expect(shown.all('dialog')).toEqual([]);
  take();
  shown.key('o');
  expect(shown.all('.run-sheet-area')).toEqual([]);

  act(() => shown.cellAt('r2c2').focus());
  shown.key('o', shown.cellAt('r2c2'));
  expect(document.activeElement?.closest('[aria-current="step"]')).not.toBeNull();
  act(() => shown.cellAt('r3c3').focus());
  shown.key('o', shown.cellAt('r3c3'));
  expect(document.activeElement?.closest('.run-sheet-area')).not.toBeNull();

  shown.key('o', document.activeElement as Element);
  expect(shown.all('.run-sheet-area')).toEqual([]);
  expect(document.activeElement).toBe(shown.cellAt('r3c3'));
});

test('arrow keys go through the steps in sight, and digits still go to the board', () => {
  take();
  act(() => shown.at('[aria-current="step"] .step-line').focus());

  shown.key('ArrowDown', document.activeElement as Element);
  expect(document.activeElement?.textContent).toContain('step 2');
  shown.key('ArrowDown', document.activeElement as Element);
  expect(document.activeElement?.textContent).toContain('Singles in row 2');
  shown.key('ArrowUp', document.activeElement as Element);
  expect(document.activeElement?.textContent).toContain('step 2');

  shown.key('4', document.activeElement as Element);
  expect(shown.made[0]).toMatch(/^PlaceDigit/);
});

test('the focus goes on to the step that comes now when its step was done', () => {
  take();
  act(() => shown.at('[aria-current="step"] .step-line').focus());

  take({ sheet: { ...sheet, steps: sheet.steps.slice(2), passages: sheet.passages.slice(1) }, notes: [] });

  expect(document.activeElement?.textContent).toContain('step 3');
});

test('whether it is open is remembered by the browser', () => {
  const kept = new Map<string, string>();
  const store = { getItem: (name: string) => kept.get(name) ?? null, setItem: kept.set.bind(kept) };
  expect(new Settings(store).runSheet.value).toBe(false);
  new Settings(store).showRunSheet(true);
  expect([new Settings(store).runSheet.value, new Settings(store).singleKeys.value]).toEqual([true, true]);
});

test('what is not planned yet, cannot be planned, or is planned anew is said so', () => {
  expect(lines('.way')).toEqual(['The way on is being planned.']);

  take({ sheet: null, blocked: 'There is no way on.', notes: [] });
  expect(lines('.way')).toEqual(['There is no way on.']);

  take({ sheet: { ...sheet, isComplete: false } });
  expect(lines('.way')[0]).toContain('The ladder leads no further than that.');
  take({ sheet: { ...sheet, steps: [], passages: [], isComplete: false } });
  expect(lines('.way')).toEqual(['The ladder leads no further from here.']);
  take({ sheet: { ...sheet, steps: [], passages: [] } });
  expect(lines('.way')).toEqual(['The grid is full.']);

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
        first: 1,
        last: 3,
        begins: 0,
        seconds: 41.2,
        text: '6 in r3c2',
        at: '2026-11-30T20:05:00',
        how: 'is a hidden single',
        notes: ['Thank the setter'],
      },
      {
        first: 4,
        last: 4,
        begins: 41.2,
        seconds: 8,
        text: 'XY-wing r1c1 r2c2',
        at: null,
        how: 'was said or shown',
        notes: [],
      },
    ],
  });

  expect(lines('.done-steps summary')).toEqual(['done4 steps1 with a note']);
  expect(shown.at('.done-steps').hasAttribute('open')).toBe(false);
  expect(lines('.done-steps li')).toEqual([
    '1–30:006 in r3c2 is a hidden single at 20:05Thank the setter',
    '40:41XY-wing r1c1 r2c2 was said or shown ',
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
