import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { connectionWords } from '../../src/desk/connectionWords.ts';
import type { Cue } from '../../src/wire.ts';
import { deduction, deskView, picture } from '../drawn.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

beforeEach(() => {
  shown = new ShownDesk();
});

afterEach(cleanup);

const cue: Cue = {
  deduction: deduction('wing', { name: 'XY-wing' }),
  grade: 2,
  hints: { where: 'Look at row 4', what: 'Look for an XY-wing', which: 'Pivot r4c2', why: 'So 9 goes' },
  picture: picture('The caption', { kind: 'cell', x: 1, y: 3, isSecond: false, tab: 'P' }),
};

test('before the first view the desk waits, and says why it is not let in', () => {
  expect(shown.at('main').textContent).toContain('Waiting for the companion.');
});

test("the presenter's desk has its areas", () => {
  shown.take();

  expect(shown.all('.area h2').map((heading) => heading.textContent)).toEqual([
    'Board',
    'Next',
    'Cues',
    'On air',
    'Watch',
  ]);
  expect(document.title).toBe("Presenter's desk");
});

test("a co-host's desk has the same areas in an order of its own", () => {
  shown.take({ role: 'coHost' });

  expect(shown.all('.area h2').map((heading) => heading.textContent)).toEqual([
    'Board',
    'Watch',
    'Viewers',
    'Next',
    'Cues',
    'On air',
  ]);
  expect(document.title).toBe("Co-host's desk");
});

test('the grid has 81 cells in nine rows, read aloud with all that is written', () => {
  const cells = deskView().cells.map((cell, index) =>
    index === 1 ? { ...cell, blockMarks: [4], cellMark: [2, 4], struck: [7], candidates: [2] } : cell,
  );
  shown.take({ cells });

  expect(shown.page.querySelectorAll('[role="row"]').length).toBe(9);
  expect(shown.page.querySelectorAll('[role="gridcell"]').length).toBe(81);
  expect(shown.cellAt('r1c1').getAttribute('aria-label')).toBe('r1c1, 1, given');
  expect(shown.cellAt('r1c2').getAttribute('aria-label')).toBe(
    'r1c2, open, block marks 4, cell mark 2 4, struck 7',
  );
  act(() => shown.model.board.showCandidates(true));
  expect(shown.cellAt('r1c2').getAttribute('aria-label')).toMatch(/candidates 2$/);
});

test('one cell at a time takes the focus by Tab, and arrows move it', () => {
  shown.take();
  expect(shown.page.querySelectorAll('[role="gridcell"][tabindex="0"]').length).toBe(1);

  shown.cellAt('r1c1').focus();
  shown.key('ArrowRight', shown.cellAt('r1c1'));
  shown.key('ArrowDown', shown.cellAt('r1c2'));
  expect(document.activeElement).toBe(shown.cellAt('r2c2'));
  expect(shown.cellAt('r2c2').tabIndex).toBe(0);
  expect(shown.cellAt('r1c1').tabIndex).toBe(-1);
});

test('drawing over cells chooses them all', () => {
  shown.take();
  fireEvent.pointerDown(shown.cellAt('r3c3'), { button: 0 });
  fireEvent.pointerOver(shown.cellAt('r3c4'), { buttons: 1 });
  fireEvent.pointerOver(shown.cellAt('r3c5'), { buttons: 1 });
  fireEvent.pointerUp(shown.cellAt('r3c5'));
  fireEvent.pointerOver(shown.cellAt('r3c6'), { buttons: 0 });

  const chosen = shown.all('[aria-selected="true"][data-cell]');
  expect(chosen.map((cell) => cell.getAttribute('data-cell'))).toEqual(['20', '21', '22']);
});

test('Ctrl and a click add a cell, a plain click begins anew', () => {
  shown.take();
  fireEvent.pointerDown(shown.cellAt('r3c3'), { button: 0 });
  fireEvent.pointerDown(shown.cellAt('r5c5'), { button: 0, ctrlKey: true });
  expect(shown.page.querySelectorAll('[aria-selected="true"][data-cell]').length).toBe(2);

  fireEvent.pointerDown(shown.cellAt('r7c7'), { button: 0 });
  expect(shown.page.querySelectorAll('[aria-selected="true"][data-cell]').length).toBe(1);
});

test('keys write at the cursor wherever the focus is, but not from a text field', () => {
  shown.take();
  act(() => shown.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [] }));
  shown.key('2');
  shown.key('2', shown.at('#filter'));

  expect(shown.made).toEqual(['PlaceDigit "r1c1" 2']);
});

test('nothing is said to be missing while slower rules are still being looked at', () => {
  shown.take();
  act(() => shown.model.takeNext({ sequence: 1, blocked: null, goesOn: true, deductions: [] }));
  expect(shown.page.textContent).toContain('Nothing easy is open: looking further.');

  act(() => shown.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [] }));
  expect(shown.page.textContent).toContain('No rule of the ladder finds anything here.');
});

test('Escape clears the air, from within a text field too', () => {
  shown.take();
  act(() => shown.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [] }));
  shown.key('Escape', shown.at('#filter'));

  expect(shown.made).toEqual(['ClearAir']);
});

test('each digit says how many of it are left', () => {
  shown.take();

  expect(shown.button('1').textContent).toBe('1 8 left');
  expect(shown.button('3').textContent).toBe('3 9 left');
});

test('what stands by is previewed on the board and nowhere else', () => {
  shown.take({ standby: cue });

  expect(shown.at('.board').querySelectorAll('.shapes .cell').length).toBe(1);
  expect(shown.at('.mirror').querySelectorAll('.shapes .cell').length).toBe(0);
  expect(shown.at('.lamp').textContent).toBe('Off air');
});

test('what is on air shows in the mirror, with lamp and grade in words', () => {
  shown.take({ onAir: cue });

  expect(shown.at('.board').querySelectorAll('.shapes .cell').length).toBe(0);
  expect(shown.at('.mirror').querySelectorAll('.shapes .cell').length).toBe(1);
  expect(shown.at('.lamp').textContent).toBe('ON AIR');
  expect(shown.at('.words-now').textContent).toBe('XY-wingGrade 2 of 4: WhatThe caption');
  expect(shown.at('[aria-current="step"]').textContent).toBe('2 Whaton air Look for an XY-wing');
  expect(shown.button('Next: 3 which').disabled).toBe(false);
});

test('deductions are options under the heading of their rule, and a click has one stand by', () => {
  shown.take();
  const deductions = [deduction('r5c5 = 5'), deduction('r1c8 <> 9', { rule: 'xy-wing', name: 'XY-wing' })];
  act(() => shown.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions }));
  fireEvent.click(shown.at('[data-id="r1c8 <> 9"] .short'));

  expect(shown.all('.rule').map((rule) => rule.textContent)).toEqual(['naked single 1', 'XY-wing 1']);
  expect(shown.made).toEqual(['StandBy "r1c8 <> 9"']);
  const active = shown.at('[role="listbox"]').getAttribute('aria-activedescendant');
  expect(shown.page.querySelector(`[id="${active}"]`)?.getAttribute('data-id')).toBe('r1c8 <> 9');
});

test('a deduction that rests on the unseen says so and offers the missing step first', () => {
  const resting = deduction('wing', {
    unseen: [{ cell: 'r4c2', digit: 5 }],
    first: 'pair',
    firstName: 'naked pair r1c1 r1c2',
  });
  shown.take({ standby: { ...cue, deduction: resting } });
  act(() => shown.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [resting] }));
  fireEvent.click(shown.button('Show first: naked pair r1c1 r1c2'));

  expect(shown.at('.unseen-note p').textContent).toBe(
    'Rests on 1 candidate that viewers cannot see to be gone: 5 in r4c2.',
  );
  expect(shown.made).toEqual(['StandBy "pair"']);
});

test('where nothing could be looked for the reason stands instead of the list', () => {
  shown.take();
  act(() =>
    shown.model.takeNext({
      sequence: 1,
      blocked: 'r1c1 and r1c5 both hold 2.',
      goesOn: false,
      deductions: [],
    }),
  );

  expect(shown.at('.next-area').textContent).toBe('NextLadder Rr1c1 and r1c5 both hold 2.');
});

test('a warning shows its cells on the board while it has the focus', () => {
  shown.take({
    watch: [{ kind: 'staleMark', text: 'The 4 is stale.', cells: ['r2c2'], since: null, entries: 3 }],
  });
  expect(shown.at('.note').textContent).toBe('Stale mark The 4 is stale.r2c2 · 3 entries ago');

  act(() => shown.at('.note').focus());
  expect(shown.cellAt('r2c2').classList.contains('pointed')).toBe(true);
  act(() => shown.at('.note').blur());
  expect(shown.cellAt('r2c2').classList.contains('pointed')).toBe(false);
});

test('a co-host sees everything and enters nothing', () => {
  shown.take({ role: 'coHost', undo: '5 in r1c1' });

  expect(shown.page.querySelectorAll('[role="gridcell"]').length).toBe(81);
  expect(shown.page.querySelector('.ways, .digit-row')).toBeNull();
  for (const name of ['Undo', 'Clear grid', 'Load'])
    expect(() => shown.button(name)).toThrow('There is no button');
  for (const name of ['l', '5', 'Delete']) shown.key(name);
  expect(shown.page.querySelector('dialog')).toBeNull();
  expect(shown.made).toEqual([]);
});

test('the state of the connection is said in words', () => {
  shown.take();
  expect(shown.at('.connection').textContent).toBe('Connected');

  act(() => {
    shown.desk.state.value = 'reconnecting';
  });
  expect(shown.at('.connection').textContent).toBe('Reconnecting: your entries wait');
  expect(connectionWords('reconnecting', 1)).toBe('Reconnecting: 1 entry waits');
  expect(connectionWords('refused', 0)).toBe('Not let in');
});

test('how the chat is doing stands at the foot, and nothing where there is none', () => {
  shown.take();
  expect(shown.page.querySelector('.chat')).toBeNull();

  shown.take({ chat: { phase: 'stopped', text: 'The chat has stopped. Correct the password.' } });
  expect(shown.at('.chat').textContent).toBe('The chat has stopped. Correct the password.');
  expect(shown.at('.chat').getAttribute('role')).toBe('status');
  const cross = shown.at('.chat path').getAttribute('d');

  shown.take({ chat: { phase: 'connected', text: 'The chat is connected: #grid on irc.example.' } });
  expect(shown.at('.chat path').getAttribute('d')).not.toBe(cross);
});
