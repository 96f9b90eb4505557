import { act, cleanup, fireEvent, render } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { DeskPage } from '../../src/desk/DeskPage.tsx';
import type { CallOut, DeskView } from '../../src/wire.ts';
import { callOut, cuedWing, deduction, deskView } from '../drawn.ts';
import { settle } from '../settle.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;
let page: Element;

beforeEach(() => {
  desk = new LoneDesk();
  page = render(<DeskPage model={desk.model} />).container;
});

afterEach(cleanup);

const show = (callOuts: CallOut[], said: Partial<DeskView> = {}) =>
  act(() => {
    desk.model.takeDesk(deskView(said));
    desk.model.takeCues({ sequence: 2, callOuts });
  });
const all = (selector: string) => [...page.querySelectorAll<HTMLElement>(selector)];
const at = (selector: string): HTMLElement => {
  const [found] = all(selector);
  if (!found) throw new Error(`There is no ${selector}.`);
  return found;
};
const button = (area: string, name: string): HTMLButtonElement => {
  const found = all(`${area} button`).find((each) => each.textContent?.startsWith(name));
  if (!(found instanceof HTMLButtonElement)) throw new Error(`There is no button ${name} in ${area}.`);
  return found;
};
const key = (name: string, target: Element = document.body, more = {}) =>
  act(() => {
    fireEvent.keyDown(target, { key: name, ...more });
  });
const pick = (id: number) => act(() => desk.model.cues.pick(id));

test('a row says stage, words, what it is about and how long it takes', () => {
  show([callOut(1), cuedWing(2, { stage: 'standBy', seconds: 2.4 }), cuedWing(3, {}, 'has been passed')]);

  expect(all('.cue-row').map((row) => row.textContent)).toEqual([
    'Point 1Talking point · 4 s',
    'Look for an XY-wingStand by · XY-wing, grade 2 what · 2 s',
    'Look for an XY-wingXY-wing, grade 2 what · 4 s · has been passed',
  ]);
});

test('the presenter is called to stand by and to go, first in words and in full', () => {
  show([callOut(1), cuedWing(2, { stage: 'standBy' }), callOut(3, { stage: 'standBy' })]);
  expect(at('.cue-call').textContent).toBe(
    ' Stand byXY-wing, grade 2 what · 4 sLook for an XY-wingTake on air TDone K1 more is called',
  );
  expect(at('.cue-call-place').getAttribute('role')).toBe('status');

  show([callOut(1), cuedWing(2, { stage: 'standBy' }), callOut(3, { stage: 'go' })]);
  expect(at('.cue-plate').textContent).toBe(' Go');
  expect(at('.cue-words').textContent).toBe('Point 3');

  show([callOut(1)]);
  expect(at('.cue-call-place').textContent).toBe('');
});

test('one key takes what is called out on air, another one marks it done', () => {
  show([cuedWing(1, { version: 2, stage: 'go' })]);
  key('t');
  key('k');

  expect(desk.made).toEqual(['TakeCue 1 2', 'TurnCue 1 2 "done"']);
});

test('with nothing called out these keys do nothing', () => {
  show([callOut(1)]);
  key('t');
  key('k');

  expect(desk.made).toEqual([]);
});

test('what is passed cannot be taken on air, and says why', () => {
  show([cuedWing(1, { stage: 'go' }, 'has been carried out')]);

  expect(button('.cue-call', 'Take on air').disabled).toBe(true);
  expect(at('.cue-call .blocked').textContent).toBe('This deduction has been carried out.');
});

test('in the list letters turn the picked cue, arrows pick, and Alt with an arrow moves', () => {
  show([callOut(1), cuedWing(2), callOut(3)]);
  const list = at('.cue-rows');
  key('ArrowDown', list);
  key('ArrowDown', list);
  for (const letter of ['s', 'g', 'k', 'l', 't']) key(letter, list);
  key('ArrowUp', list, { altKey: true });
  key('Delete', list);

  expect(desk.made).toEqual([
    'TurnCue 2 1 "standBy"',
    'TurnCue 2 1 "go"',
    'TurnCue 2 1 "done"',
    'TurnCue 2 1 "listed"',
    'TakeCue 2 1',
    'MoveCue 2 null',
    'RemoveCue 2 1',
  ]);
  expect(list.getAttribute('aria-activedescendant')).toBe(at('[data-cue="2"]').id);
});

test('keys that are held and keys with Ctrl are left alone, and so is the grade where it is chosen', () => {
  show([cuedWing(1)]);
  pick(1);
  key('g', at('.cue-rows'), { repeat: true });
  key('s', at('.cue-rows'), { ctrlKey: true });
  key('g', at('.cue-tools select'));

  expect(desk.made).toEqual([]);
});

test('everything that keys do buttons do as well', () => {
  show([callOut(1), cuedWing(2), callOut(3)]);
  pick(2);
  for (const name of ['Stand by', 'Go', 'Done', 'On air', '↑', '↓', 'Remove'])
    fireEvent.click(button('.cue-tools', name));
  fireEvent.change(at('.cue-tools select'), { target: { value: '4' } });

  expect(desk.made).toEqual([
    'TurnCue 2 1 "standBy"',
    'TurnCue 2 1 "go"',
    'TurnCue 2 1 "done"',
    'TakeCue 2 1',
    'MoveCue 2 null',
    'MoveCue 2 3',
    'RemoveCue 2 1',
    'RegradeCue 2 1 4',
  ]);
});

test('a talking point is written and changed in one field', async () => {
  show([callOut(1)]);
  key('w');
  expect(document.activeElement).toBe(at('#cue-text'));
  fireEvent.input(at('#cue-text'), { target: { value: 'Thanks' } });
  await act(async () => {
    fireEvent.submit(at('.cue-writer'));
    await settle();
  });
  pick(1);
  key('e', at('.cue-rows'));
  expect(at('#cue-text')).toHaveProperty('value', 'Point 1');
  fireEvent.input(at('#cue-text'), { target: { value: 'Point one' } });
  await act(async () => {
    fireEvent.submit(at('.cue-writer'));
    await settle();
  });

  expect(desk.made).toEqual(['CueText "Thanks"', 'RewordCue 1 1 "Point one"']);
});

test('what is done or passed is cleared at once, and only then is there something to clear', () => {
  show([callOut(1)]);
  expect(at('.cues-area header').textContent).toBe('Cues1');

  show([callOut(1), callOut(2, { stage: 'done' }), cuedWing(3, {}, 'has been passed')]);
  fireEvent.click(button('.cues-area', 'Clear 2 done or passed'));
  expect(desk.made).toEqual(['SweepCues']);
});

test('a co-host reads what a deduction says and puts it on the list with one key', () => {
  show([], { role: 'coHost' });
  act(() =>
    desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [deduction('wing')] }),
  );
  fireEvent.click(at('[data-id="wing"]'));
  expect(at('.chosen-deduction p').textContent).toBe('Said of wing. 4 s to say');
  fireEvent.change(at('.chosen-deduction select'), { target: { value: '3' } });
  key('q');

  expect(desk.made).toEqual(['CueDeduction "wing" 3']);
});

test('a co-host is told whether they may put things on air, and takes nothing on air while they may not', () => {
  show([cuedWing(1, { stage: 'go' })], { role: 'coHost' });
  pick(1);
  expect(at('.permission').textContent).toBe('The presenter alone puts things on air now.');
  expect(button('.cue-tools', 'On air').disabled).toBe(true);
  key('t');
  key('t', at('.cue-rows'));
  expect(desk.made).toEqual([]);

  show([cuedWing(1, { stage: 'go' })], { role: 'coHost', coHostMayAir: true });
  expect(at('.permission').textContent).toBe('You may put things on air.');
  key('t');
  expect(desk.made).toEqual(['TakeCue 1 1']);
});

test('the presenter gives and takes the permission with one key, and a co-host cannot', () => {
  show([]);
  key('a');
  show([], { coHostMayAir: true });
  key('a');
  show([], { role: 'coHost' });
  key('a');

  expect(desk.made).toEqual(['AllowCoHostOnAir true', 'AllowCoHostOnAir false']);
});
