import { describe, expect, test } from 'vitest';
import { actionFor, type KeyPlace, type KeyPress } from '../../src/desk/keys/actions.ts';

const free: KeyPlace = {
  isDialogOpen: false,
  isInText: false,
  isOnBoard: false,
  isOnControl: false,
  singleKeys: true,
};
const onBoard = { ...free, isOnBoard: true };
const inText = { ...free, isInText: true };
const inDialog = { ...free, isDialogOpen: true };
const withoutSingles = { ...free, singleKeys: false };

/** A press in words: `Ctrl+Shift+z`, `ArrowUp`, `n held`, `& on Digit1`. */
function press(words: string): KeyPress {
  const [, chord = '', code = '', held] = /^(\S+)(?: on (\S+))?( held)?$/.exec(words) ?? [];
  const parts = chord.split('+');
  const has = (name: string) => parts.includes(name);
  return {
    key: parts.at(-1) ?? '',
    code,
    ctrlKey: has('Ctrl') || has('AltGr'),
    metaKey: has('Meta'),
    altKey: has('Alt') || has('AltGr'),
    shiftKey: has('Shift'),
    repeat: held !== undefined,
    getModifierState: (name) => name === 'AltGraph' && has('AltGr'),
  };
}

/** The action in words. */
function heard(words: string, place: KeyPlace): string {
  const action = actionFor(press(words), place);
  return action ? Object.values(action).join(' ') : '-';
}

describe('anywhere on the desk', () => {
  test.each([
    ['5', 'digit 5'],
    ['0', 'erase'],
    ['Delete', 'erase'],
    ['Backspace', 'erase'],
    ['d', 'way digit'],
    ['B', 'way blockMark'],
    ['c', 'way cellMark'],
    ['x', 'way strike'],
    ['l', 'load'],
    ['/', 'filter'],
    ['Shift+?', 'keys'],
    [']', 'step 1'],
    ['[', 'step -1'],
    ['r', 'ladder'],
    ['u', 'used'],
    ['n', 'nextGrade'],
    ['p', 'back'],
    ['Escape', 'clearAir'],
    ['Ctrl+z', 'undo'],
    ['Meta+z', 'undo'],
    ['Ctrl+y', 'redo'],
    ['Ctrl+Shift+Z', 'redo'],
    ['q', 'cueIt'],
    ['w', 'writeCue'],
    ['t', 'takeCue'],
    ['k', 'cueDone'],
    ['a', 'allowCoHosts'],
    ['y', 'why'],
    ['m', 'screen'],
    ['ArrowUp', '-'],
    ['Ctrl+n', '-'],
    ['Ctrl+p', '-'],
    ['Alt+d', '-'],
    ['Ctrl+Alt+z', '-'],
  ])('%s is %s', (words, action) => {
    expect(heard(words, free)).toBe(action);
  });
});

describe('on the board', () => {
  test.each([
    ['ArrowUp', 'move -1 0 false'],
    ['ArrowDown', 'move 1 0 false'],
    ['Shift+ArrowLeft', 'move 0 -1 true'],
    ['ArrowRight held', 'move 0 1 false'],
    ['Home', 'move 0 -8 false'],
    ['Enter', 'settle'],
  ])('%s is %s', (words, action) => {
    expect(heard(words, onBoard)).toBe(action);
  });
});

test('Enter on a button belongs to the button', () => {
  expect(heard('Enter', { ...free, isOnControl: true })).toBe('-');
});

test('in a text field nothing is heard but Escape, which clears the air', () => {
  for (const words of ['n', '5', '/', 'Ctrl+z', 'Delete', ']']) expect(heard(words, inText)).toBe('-');
  expect(heard('Escape', inText)).toBe('clearAir');
});

test('while a dialog is open it has all keys, Escape too', () => {
  for (const words of ['n', '5', 'Escape', 'Ctrl+z', 'ArrowUp']) expect(heard(words, inDialog)).toBe('-');
});

test('a key that is held down changes nothing on air and writes nothing again', () => {
  for (const words of [
    'n held',
    'p held',
    'Escape held',
    'u held',
    't held',
    'a held',
    '5 held',
    'Delete held',
  ]) {
    expect(heard(words, free)).toBe('-');
  }
});

test('a held bracket goes on through the list, which nobody else sees', () => {
  expect(heard('] held', free)).toBe('step 1');
});

test('without single-letter keys a character does something on the board alone', () => {
  for (const words of ['n', '5', '0', '/', ']', 'Shift+?']) expect(heard(words, withoutSingles)).toBe('-');
  expect(heard('5', { ...withoutSingles, isOnBoard: true })).toBe('digit 5');
  expect(heard('n', { ...withoutSingles, isOnBoard: true })).toBe('-');
  expect(heard('Escape', withoutSingles)).toBe('clearAir');
  expect(heard('Ctrl+z', withoutSingles)).toBe('undo');
});

test('a top row that writes digits only with Shift writes them without it too', () => {
  expect(heard('& on Digit1', free)).toBe('digit 1');
  expect(heard('Shift+1 on Digit1', free)).toBe('digit 1');
  expect(heard('Shift+! on Digit1', free)).toBe('-');
});

test('the number pad without its lock moves and does not write', () => {
  expect(heard('End on Numpad1', free)).toBe('-');
  expect(heard('1 on Numpad1', free)).toBe('digit 1');
});

test('brackets behind AltGr are brackets', () => {
  expect(heard('AltGr+]', free)).toBe('step 1');
});
