import { act, cleanup, fireEvent, render } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { DeskPage } from '../../src/desk/DeskPage.tsx';
import type { LadderView } from '../../src/wire.ts';
import { deduction, deskView } from '../drawn.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;
let page: Element;

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
  desk = new LoneDesk();
  page = render(<DeskPage model={desk.model} />).container;
  act(() => {
    desk.model.takeDesk(deskView());
    desk.model.ladder.take(whole);
  });
});

afterEach(cleanup);

const open = () => act(() => void fireEvent.keyDown(document.body, { key: 'r' }));
const lines = (selector: string) => [...page.querySelectorAll(selector)].map((line) => line.textContent);
const labelled = (words: string): HTMLInputElement => {
  const label = [...page.querySelectorAll('dialog label')].find((each) => each.textContent === words);
  const input = label?.querySelector('input');
  if (!input) throw new Error(`Nothing is labelled ${words}.`);
  return input;
};

test('R opens the ladder with its rules from the easiest up and a switch for each family', () => {
  open();

  expect(lines('dialog h2')).toEqual(['Ladder']);
  expect(lines('.rungs li')).toEqual(['naked single', 'XY-wing', 'unique rectangle']);
  expect(lines('.families label')).toEqual(['singles', 'wings', 'uniqueness']);
  expect(lines('.families small')).toEqual([
    'These rest on the puzzle having a single solution, and the list says so.',
  ]);
});

test('a rule is chosen past which nothing is looked for, or the end of the ladder', () => {
  open();
  const select = page.querySelector('dialog select') as HTMLSelectElement;
  fireEvent.change(select, { target: { value: 'xy-wing' } });
  fireEvent.change(select, { target: { value: '' } });

  expect(desk.made).toEqual(['StopLadder "xy-wing"', 'StopLadder null']);
});

test('a family is switched off and on', () => {
  open();
  fireEvent.click(labelled('wings'));
  act(() => desk.model.ladder.take(cut));
  fireEvent.click(labelled('singles'));

  expect(desk.made).toEqual(['SwitchFamily "wings" false', 'SwitchFamily "singles" true']);
});

test('what is not looked for is crossed out, and told to those who do not see it', () => {
  open();
  act(() => desk.model.ladder.take(cut));

  expect(lines('.rungs s')).toEqual(['naked single', 'unique rectangle']);
  expect(lines('.rungs li')).toContain('naked single not looked for');
  expect(lines('.ladder h3')).toContain('1 of 3 rules, easiest first');
});

test('the list says that not the whole ladder is looked for', () => {
  expect(page.querySelector('.cut')).toBeNull();

  act(() => desk.model.ladder.take(cut));
  expect(lines('.cut')).toEqual(['Ladder: nothing past XY-wing, without singles.']);
});

test('a co-host sees the ladder and cannot cut it', () => {
  act(() => desk.model.takeDesk(deskView({ role: 'coHost' })));
  open();

  expect(page.querySelector('fieldset.ladder')?.hasAttribute('disabled')).toBe(true);
});

test('a deduction that rests on a single solution says so, and no other does', () => {
  const deductions = [deduction('plain'), deduction('unique', { assumesOneSolution: true })];
  act(() => desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions }));

  expect(lines('.deduction .facts')).toEqual(['4 s', '4 s · rests on a single solution']);
});
