import { act, cleanup, fireEvent, render } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { reasonsIn } from '../../src/desk/board/LoadDialog.tsx';
import { connectionWords } from '../../src/desk/connectionWords.ts';
import { DeskPage } from '../../src/desk/DeskPage.tsx';
import type { Cue } from '../../src/wire.ts';
import { deduction, deskView, picture } from '../drawn.ts';
import { settle } from '../settle.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;
let page: Element;

beforeEach(() => {
  desk = new LoneDesk();
  page = render(<DeskPage model={desk.model} />).container;
});

afterEach(cleanup);

const cue: Cue = {
  deduction: deduction('wing', { name: 'XY-wing' }),
  grade: 2,
  hints: { where: 'Look at row 4', what: 'Look for an XY-wing', which: 'Pivot r4c2', why: 'So 9 goes' },
  picture: picture('The caption', { kind: 'cell', x: 1, y: 3, isSecond: false, tab: 'P' }),
};

const take = (said = {}) => act(() => desk.model.takeDesk(deskView(said)));
const at = (selector: string): HTMLElement => {
  const found = page.querySelector<HTMLElement>(selector);
  if (!found) throw new Error(`There is no ${selector}.`);
  return found;
};
const cellAt = (name: string) => at(`[aria-label^="${name},"]`);
const button = (name: string): HTMLButtonElement => {
  const found = [...page.querySelectorAll('button')].find((each) => each.textContent?.startsWith(name));
  if (!found) throw new Error(`There is no button ${name}.`);
  return found;
};
const submit = () =>
  act(async () => {
    fireEvent.submit(at('dialog form'));
    await settle();
  });
const key = (name: string, target: Element = document.body) =>
  act(() => {
    fireEvent.keyDown(target, { key: name });
  });

test('before the first view the desk waits, and says why it is not let in', () => {
  expect(at('main').textContent).toContain('Waiting for the companion.');
});

test("the presenter's desk has its areas", () => {
  take();

  expect([...page.querySelectorAll('.area h2')].map((heading) => heading.textContent)).toEqual([
    'Board',
    'Next',
    'Cues',
    'On air',
    'Watch',
  ]);
  expect(document.title).toBe("Presenter's desk");
});

test("a co-host's desk has the same areas in an order of its own", () => {
  take({ role: 'coHost' });

  expect([...page.querySelectorAll('.area h2')].map((heading) => heading.textContent)).toEqual([
    'Board',
    'Watch',
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
  take({ cells });

  expect(page.querySelectorAll('[role="row"]').length).toBe(9);
  expect(page.querySelectorAll('[role="gridcell"]').length).toBe(81);
  expect(cellAt('r1c1').getAttribute('aria-label')).toBe('r1c1, 1, given');
  expect(cellAt('r1c2').getAttribute('aria-label')).toBe(
    'r1c2, open, block marks 4, cell mark 2 4, struck 7',
  );
  act(() => desk.model.board.showCandidates(true));
  expect(cellAt('r1c2').getAttribute('aria-label')).toMatch(/candidates 2$/);
});

test('one cell at a time takes the focus by Tab, and arrows move it', () => {
  take();
  expect(page.querySelectorAll('[role="gridcell"][tabindex="0"]').length).toBe(1);

  cellAt('r1c1').focus();
  key('ArrowRight', cellAt('r1c1'));
  key('ArrowDown', cellAt('r1c2'));
  expect(document.activeElement).toBe(cellAt('r2c2'));
  expect(cellAt('r2c2').tabIndex).toBe(0);
  expect(cellAt('r1c1').tabIndex).toBe(-1);
});

test('drawing over cells chooses them all', () => {
  take();
  fireEvent.pointerDown(cellAt('r3c3'), { button: 0 });
  fireEvent.pointerOver(cellAt('r3c4'), { buttons: 1 });
  fireEvent.pointerOver(cellAt('r3c5'), { buttons: 1 });
  fireEvent.pointerUp(cellAt('r3c5'));
  fireEvent.pointerOver(cellAt('r3c6'), { buttons: 0 });

  const chosen = [...page.querySelectorAll('[aria-selected="true"][data-cell]')];
  expect(chosen.map((cell) => cell.getAttribute('data-cell'))).toEqual(['20', '21', '22']);
});

test('Ctrl and a click add a cell, a plain click begins anew', () => {
  take();
  fireEvent.pointerDown(cellAt('r3c3'), { button: 0 });
  fireEvent.pointerDown(cellAt('r5c5'), { button: 0, ctrlKey: true });
  expect(page.querySelectorAll('[aria-selected="true"][data-cell]').length).toBe(2);

  fireEvent.pointerDown(cellAt('r7c7'), { button: 0 });
  expect(page.querySelectorAll('[aria-selected="true"][data-cell]').length).toBe(1);
});

test('keys write at the cursor wherever the focus is, but not from a text field', () => {
  take();
  act(() => desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [] }));
  key('2');
  key('2', at('#filter'));

  expect(desk.made).toEqual(['PlaceDigit "r1c1" 2']);
});

test('nothing is said to be missing while slower rules are still being looked at', () => {
  take();
  act(() => desk.model.takeNext({ sequence: 1, blocked: null, goesOn: true, deductions: [] }));
  expect(page.textContent).toContain('Nothing easy is open: looking further.');

  act(() => desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [] }));
  expect(page.textContent).toContain('No rule of the ladder finds anything here.');
});

test('Escape clears the air, from within a text field too', () => {
  take();
  act(() => desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [] }));
  key('Escape', at('#filter'));

  expect(desk.made).toEqual(['ClearAir']);
});

test('each digit says how many of it are left', () => {
  take();

  expect(button('1').textContent).toBe('1 8 left');
  expect(button('3').textContent).toBe('3 9 left');
});

test('what stands by is previewed on the board and nowhere else', () => {
  take({ standby: cue });

  expect(at('.board').querySelectorAll('.shapes .cell').length).toBe(1);
  expect(at('.mirror').querySelectorAll('.shapes .cell').length).toBe(0);
  expect(at('.lamp').textContent).toBe('Off air');
});

test('what is on air shows in the mirror, with lamp and grade in words', () => {
  take({ onAir: cue });

  expect(at('.board').querySelectorAll('.shapes .cell').length).toBe(0);
  expect(at('.mirror').querySelectorAll('.shapes .cell').length).toBe(1);
  expect(at('.lamp').textContent).toBe('ON AIR');
  expect(at('.words-now').textContent).toBe('XY-wingGrade 2 of 4: WhatThe caption');
  expect(at('[aria-current="step"]').textContent).toBe('2 Whaton air Look for an XY-wing');
  expect(button('Next: 3 which').disabled).toBe(false);
});

test('deductions are options under the heading of their rule, and a click has one stand by', () => {
  take();
  const deductions = [deduction('r5c5 = 5'), deduction('r1c8 <> 9', { rule: 'xy-wing', name: 'XY-wing' })];
  act(() => desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions }));
  fireEvent.click(at('[data-id="r1c8 <> 9"] .short'));

  expect([...page.querySelectorAll('.rule')].map((rule) => rule.textContent)).toEqual([
    'naked single 1',
    'XY-wing 1',
  ]);
  expect(desk.made).toEqual(['StandBy "r1c8 <> 9"']);
  const active = at('[role="listbox"]').getAttribute('aria-activedescendant');
  expect(page.querySelector(`[id="${active}"]`)?.getAttribute('data-id')).toBe('r1c8 <> 9');
});

test('a deduction that rests on the unseen says so and offers the missing step first', () => {
  const resting = deduction('wing', {
    unseen: [{ cell: 'r4c2', digit: 5 }],
    first: 'pair',
    firstName: 'naked pair r1c1 r1c2',
  });
  take({ standby: { ...cue, deduction: resting } });
  act(() => desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [resting] }));
  fireEvent.click(button('Show first: naked pair r1c1 r1c2'));

  expect(at('.unseen-note p').textContent).toBe(
    'Rests on 1 candidate that viewers cannot see to be gone: 5 in r4c2.',
  );
  expect(desk.made).toEqual(['StandBy "pair"']);
});

test('where nothing could be looked for the reason stands instead of the list', () => {
  take();
  act(() =>
    desk.model.takeNext({
      sequence: 1,
      blocked: 'r1c1 and r1c5 both hold 2.',
      goesOn: false,
      deductions: [],
    }),
  );

  expect(at('.next-area').textContent).toBe('Nextr1c1 and r1c5 both hold 2.');
});

test('a warning shows its cells on the board while it has the focus', () => {
  take({ watch: [{ kind: 'staleMark', text: 'The 4 is stale.', cells: ['r2c2'], since: null, entries: 3 }] });
  expect(at('.note').textContent).toBe('Stale mark The 4 is stale.r2c2 · 3 entries ago');

  act(() => at('.note').focus());
  expect(cellAt('r2c2').classList.contains('pointed')).toBe(true);
  act(() => at('.note').blur());
  expect(cellAt('r2c2').classList.contains('pointed')).toBe(false);
});

test('a co-host sees everything and enters nothing', () => {
  take({ role: 'coHost', undo: '5 in r1c1' });

  expect(page.querySelectorAll('[role="gridcell"]').length).toBe(81);
  expect(page.querySelector('.ways, .digit-row')).toBeNull();
  for (const name of ['Undo', 'Clear grid', 'Load']) expect(() => button(name)).toThrow('There is no button');
  for (const name of ['l', '5', 'Delete']) key(name);
  expect(page.querySelector('dialog')).toBeNull();
  expect(desk.made).toEqual([]);
});

test('the grid is cleared only after a question', () => {
  take();
  fireEvent.click(button('Clear grid'));
  expect(desk.made).toEqual([]);

  fireEvent.click(at('dialog .main'));
  expect(desk.made).toEqual(['ClearGrid']);
  expect(page.querySelector('dialog')).toBeNull();
});

test('a refused puzzle leaves the dialog open with every reason', async () => {
  desk.calls.refusals.set(
    'LoadPuzzle',
    '5 stands twice in row 1: change one of them. 5 stands twice in block 1. The link starts with ftp.',
  );
  take();
  key('l');
  await submit();

  expect([...page.querySelectorAll('.reasons li')].map((reason) => reason.textContent)).toEqual([
    '5 stands twice in row 1: change one of them.',
    '5 stands twice in block 1.',
    'The link starts with ftp.',
  ]);

  desk.calls.refusals.clear();
  await submit();
  expect(page.querySelector('dialog')).toBeNull();
});

test('no reason is no reason', () => {
  expect(reasonsIn('')).toEqual([]);
});

test('single-letter keys can be switched off', () => {
  take();
  key('?');
  fireEvent.click(at('.keys-dialog input'));
  act(() => desk.model.close());
  key('n');

  expect(desk.made).toEqual([]);
});

test('the state of the connection is said in words', () => {
  take();
  expect(at('.connection').textContent).toBe('Connected');

  act(() => {
    desk.state.value = 'reconnecting';
  });
  expect(at('.connection').textContent).toBe('Reconnecting: your entries wait');
  expect(connectionWords('reconnecting', 1)).toBe('Reconnecting: 1 entry waits');
  expect(connectionWords('refused', 0)).toBe('Not let in');
});

test('how the chat is doing stands at the foot, and nothing where there is none', () => {
  take();
  expect(page.querySelector('.chat')).toBeNull();

  take({ chat: { phase: 'stopped', text: 'The chat has stopped. Correct the password.' } });
  expect(at('.chat').textContent).toBe('The chat has stopped. Correct the password.');
  expect(at('.chat').getAttribute('role')).toBe('status');
  const cross = at('.chat path').getAttribute('d');

  take({ chat: { phase: 'connected', text: 'The chat is connected: #grid on irc.example.' } });
  expect(at('.chat path').getAttribute('d')).not.toBe(cross);
});
