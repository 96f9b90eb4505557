import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { reasonsIn } from '../../src/desk/board/LoadDialog.tsx';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

beforeEach(() => {
  shown = new ShownDesk();
});

afterEach(cleanup);

test('the grid is cleared only after a question', () => {
  shown.take();
  fireEvent.click(shown.button('Clear grid'));
  expect(shown.made).toEqual([]);

  fireEvent.click(shown.at('dialog .main'));
  expect(shown.made).toEqual(['ClearGrid']);
  expect(shown.page.querySelector('dialog')).toBeNull();
});

test('a grid may be pasted as soon as the dialog is open', () => {
  shown.take();
  shown.key('l');

  expect(document.activeElement).toBe(shown.at('dialog textarea[name="grid"]'));
});

test('a refused puzzle leaves the dialog open with every reason', async () => {
  shown.desk.calls.refusals.set(
    'LoadPuzzle',
    '5 stands twice in row 1: change one of them. 5 stands twice in block 1. The link starts with ftp.',
  );
  shown.take();
  shown.key('l');
  await shown.submit('dialog form');

  expect(shown.all('.reasons li').map((reason) => reason.textContent)).toEqual([
    '5 stands twice in row 1: change one of them.',
    '5 stands twice in block 1.',
    'The link starts with ftp.',
  ]);

  shown.desk.calls.refusals.clear();
  await shown.submit('dialog form');
  expect(shown.page.querySelector('dialog')).toBeNull();
});

test.each([
  ['5'.repeat(81), 'one-line'],
  ['', 'one-line'],
  [Array(9).fill('5 . . | . . . | . . .').join('\n'), ''],
])('a grid in one line is shown nine by nine, and lines as they are: %s', (grid, kind) => {
  shown.take();
  shown.key('l');
  fireEvent.input(shown.at('textarea'), { target: { value: grid } });

  expect(shown.at('textarea').className).toBe(kind);
});

test('no reason is no reason', () => {
  expect(reasonsIn('')).toEqual([]);
});

test('single-letter keys can be switched off', () => {
  shown.take();
  shown.key('?');
  fireEvent.click(shown.at('.keys-dialog input'));
  act(() => shown.model.close());
  shown.key('n');

  expect(shown.made).toEqual([]);
});
