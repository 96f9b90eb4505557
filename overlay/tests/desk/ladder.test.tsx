import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { LadderView } from '../../src/wireLadder.ts';
import { deduction } from '../drawn.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

const whole: LadderView = {
  sequence: 1,
  last: null,
  rungs: [
    { rule: 'naked-single', name: 'naked single', family: 'singles', isOn: true },
    { rule: 'xy-wing', name: 'XY-wing', family: 'wings', isOn: true },
    { rule: 'unique-rectangle', name: 'unique rectangle', family: 'uniqueness', isOn: true },
  ],
  families: [
    { name: 'singles', isOn: true, assumesOneSolution: false },
    { name: 'wings', isOn: true, assumesOneSolution: false },
    { name: 'uniqueness', isOn: true, assumesOneSolution: true },
  ],
};

const cut: LadderView = {
  sequence: 2,
  last: 'xy-wing',
  rungs: whole.rungs.map((rung) => ({ ...rung, isOn: rung.rule === 'xy-wing' })),
  families: whole.families.map((family) => ({ ...family, isOn: family.name !== 'singles' })),
};

beforeEach(() => {
  shown = new ShownDesk();
  shown.take();
  take(whole);
});

afterEach(cleanup);

const take = (view: LadderView) => act(() => shown.model.ladder.take(view));
const lines = (selector: string) => shown.all(selector).map((line) => line.textContent);
const labelled = (words: string): HTMLInputElement => {
  const label = shown.all('dialog label').find((each) => each.textContent === words);
  const input = label?.querySelector('input');
  if (!input) throw new Error(`Nothing is labelled ${words}.`);
  return input;
};

test('R opens the ladder with its rules from the easiest up and a switch for each family', () => {
  shown.key('r');

  expect(lines('dialog h2')).toEqual(['Ladder']);
  expect(lines('.rungs li')).toEqual(['naked single', 'XY-wing', 'unique rectangle']);
  expect(lines('.families label')).toEqual(['singles', 'wings', 'uniqueness']);
  expect(lines('.families small')).toEqual([
    'These rest on the puzzle having a single solution, and the list says so.',
  ]);
});

test('a rule is chosen past which nothing is looked for, or the end of the ladder', () => {
  shown.key('r');
  const select = shown.at('dialog select');
  fireEvent.change(select, { target: { value: 'xy-wing' } });
  fireEvent.change(select, { target: { value: '' } });

  expect(shown.made).toEqual(['StopLadder "xy-wing"', 'StopLadder null']);
});

test('a family is switched off and on', () => {
  shown.key('r');
  fireEvent.click(labelled('wings'));
  take(cut);
  fireEvent.click(labelled('singles'));

  expect(shown.made).toEqual(['SwitchFamily "wings" false', 'SwitchFamily "singles" true']);
});

test('what is not looked for is crossed out, and told to those who do not see it', () => {
  shown.key('r');
  take(cut);

  expect(lines('.rungs s')).toEqual(['naked single', 'unique rectangle']);
  expect(lines('.rungs li')).toContain('naked single not looked for');
  expect(lines('.ladder h3')).toContain('1 of 3 rules, easiest first');
});

test('the list says that not the whole ladder is looked for', () => {
  expect(lines('.cut')).toEqual([]);

  take(cut);
  expect(lines('.cut')).toEqual(['Ladder: nothing past XY-wing, without singles.']);
});

test('a co-host sees the ladder and cannot cut it', () => {
  shown.take({ role: 'coHost' });
  shown.key('r');

  expect(shown.at('fieldset.ladder').hasAttribute('disabled')).toBe(true);
});

test('a deduction that rests on a single solution says so, and no other does', () => {
  const deductions = [deduction('plain'), deduction('unique', { assumesOneSolution: true })];
  act(() => shown.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions }));

  expect(lines('.deduction .facts')).toEqual(['4 s', '4 s · rests on a single solution']);
});
