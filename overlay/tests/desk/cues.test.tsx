import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { callOut, cuedWing, deduction } from '../drawn.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

beforeEach(() => {
  shown = new ShownDesk();
});

afterEach(cleanup);

const pick = (id: number) => act(() => shown.model.cues.pick(id));

test('a row says stage, words, what it is about and how long it takes', () => {
  shown.list([
    callOut(1),
    cuedWing(2, { stage: 'standBy', seconds: 2.4 }),
    cuedWing(3, {}, 'has been passed'),
  ]);

  expect(shown.all('.cue-row').map((row) => row.textContent)).toEqual([
    'Point 1Talking point · 4 s',
    'Look for an XY-wingStand by · XY-wing, grade 2 what · 2 s',
    'Look for an XY-wingXY-wing, grade 2 what · 4 s · has been passed',
  ]);
});

test('a list without an option is no list box, and keeps the focus when it is emptied', () => {
  shown.list([callOut(1)]);
  const list = shown.at('.cue-rows');
  act(() => list.focus());
  expect(list.getAttribute('role')).toBe('listbox');

  shown.list([]);
  expect([list.getAttribute('role'), document.activeElement === list]).toEqual(['group', true]);
});

test('the presenter is called to stand by and to go, first in words and in full', () => {
  shown.list([callOut(1), cuedWing(2, { stage: 'standBy' }), callOut(3, { stage: 'standBy' })]);
  expect(shown.at('.cue-call').textContent).toBe(
    ' Stand byXY-wing, grade 2 what · 4 sLook for an XY-wingTake on air TDone K1 more is called',
  );
  expect(shown.at('.cue-call-place').getAttribute('role')).toBe('status');

  shown.list([callOut(1), cuedWing(2, { stage: 'standBy' }), callOut(3, { stage: 'go' })]);
  expect(shown.at('.cue-plate').textContent).toBe(' Go');
  expect(shown.at('.cue-words').textContent).toBe('Point 3');

  shown.list([callOut(1)]);
  expect(shown.at('.cue-call-place').textContent).toBe('');
});

test('one key takes what is called out on air, another one marks it done', () => {
  shown.list([cuedWing(1, { version: 2, stage: 'go' })]);
  shown.key('t');
  shown.key('k');

  expect(shown.made).toEqual(['TakeCue 1 2', 'TurnCue 1 2 "done"']);
});

test('with nothing called out these keys do nothing', () => {
  shown.list([callOut(1)]);
  shown.key('t');
  shown.key('k');

  expect(shown.made).toEqual([]);
});

test('what is passed cannot be taken on air, and says why', () => {
  shown.list([cuedWing(1, { stage: 'go' }, 'has been carried out')]);

  expect(shown.button('Take on air', '.cue-call').disabled).toBe(true);
  expect(shown.at('.cue-call .blocked').textContent).toBe('This deduction has been carried out.');
});

test('in the list letters turn the picked cue, arrows pick, and Alt with an arrow moves', () => {
  shown.list([callOut(1), cuedWing(2), callOut(3)]);
  const list = shown.at('.cue-rows');
  shown.key('ArrowDown', list);
  shown.key('ArrowDown', list);
  for (const letter of ['s', 'g', 'k', 'l', 't']) shown.key(letter, list);
  shown.key('ArrowUp', list, { altKey: true });
  shown.key('Delete', list);

  expect(shown.made).toEqual([
    'TurnCue 2 1 "standBy"',
    'TurnCue 2 1 "go"',
    'TurnCue 2 1 "done"',
    'TurnCue 2 1 "listed"',
    'TakeCue 2 1',
    'MoveCue 2 null',
    'RemoveCue 2 1',
  ]);
  expect(list.getAttribute('aria-activedescendant')).toBe(shown.at('[data-cue="2"]').id);
});

test('keys that are held and keys with Ctrl are left alone, and so is the grade where it is chosen', () => {
  shown.list([cuedWing(1)]);
  pick(1);
  shown.key('g', shown.at('.cue-rows'), { repeat: true });
  shown.key('s', shown.at('.cue-rows'), { ctrlKey: true });
  shown.key('g', shown.at('.cue-tools select'));

  expect(shown.made).toEqual([]);
});

test('everything that keys do buttons do as well', () => {
  shown.list([callOut(1), cuedWing(2), callOut(3)]);
  pick(2);
  for (const name of ['Stand by', 'Go', 'Done', 'On air', '↑', '↓', 'Remove'])
    fireEvent.click(shown.button(name, '.cue-tools'));
  fireEvent.change(shown.at('.cue-tools select'), { target: { value: '4' } });

  expect(shown.made).toEqual([
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
  shown.list([callOut(1)]);
  shown.key('w');
  expect(document.activeElement).toBe(shown.at('#cue-text'));
  fireEvent.input(shown.at('#cue-text'), { target: { value: 'Thanks' } });
  await shown.submit('.cue-writer');
  pick(1);
  shown.key('e', shown.at('.cue-rows'));
  expect(shown.at('#cue-text')).toHaveProperty('value', 'Point 1');
  fireEvent.input(shown.at('#cue-text'), { target: { value: 'Point one' } });
  await shown.submit('.cue-writer');

  expect(shown.made).toEqual(['CueText "Thanks"', 'RewordCue 1 1 "Point one"']);
});

test('what is done or passed is cleared at once, and only then is there something to clear', () => {
  shown.list([callOut(1)]);
  expect(shown.at('.cues-area header').textContent).toBe('Cues1');

  shown.list([callOut(1), callOut(2, { stage: 'done' }), cuedWing(3, {}, 'has been passed')]);
  fireEvent.click(shown.button('Clear 2 done or passed', '.cues-area'));
  expect(shown.made).toEqual(['SweepCues']);
});

test('a co-host reads what a deduction says and puts it on the list with one key', () => {
  shown.list([], { role: 'coHost' });
  act(() =>
    shown.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [deduction('wing')] }),
  );
  fireEvent.click(shown.at('[data-id="wing"]'));
  expect(shown.at('.chosen-deduction p').textContent).toBe('Said of wing. 4 s to say');
  fireEvent.change(shown.at('.chosen-deduction select'), { target: { value: '3' } });
  shown.key('q');

  expect(shown.made).toEqual(['CueDeduction "wing" 3']);
});

test('a co-host is told whether they may put things on air, and takes nothing on air while they may not', () => {
  shown.list([cuedWing(1, { stage: 'go' })], { role: 'coHost' });
  pick(1);
  expect(shown.at('.permission').textContent).toBe('The presenter alone puts things on air now.');
  expect(shown.button('On air', '.cue-tools').disabled).toBe(true);
  shown.key('t');
  shown.key('t', shown.at('.cue-rows'));
  expect(shown.made).toEqual([]);

  shown.list([cuedWing(1, { stage: 'go' })], { role: 'coHost', coHostMayAir: true });
  expect(shown.at('.permission').textContent).toBe('You may put things on air.');
  shown.key('t');
  expect(shown.made).toEqual(['TakeCue 1 1']);
});

test('the presenter gives and takes the permission with one key, and a co-host cannot', () => {
  shown.list([]);
  shown.key('a');
  shown.list([], { coHostMayAir: true });
  shown.key('a');
  shown.list([], { role: 'coHost' });
  shown.key('a');

  expect(shown.made).toEqual(['AllowCoHostOnAir true', 'AllowCoHostOnAir false']);
});
