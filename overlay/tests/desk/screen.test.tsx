import { act, cleanup } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { ScreenView } from '../../src/wireScreen.ts';
import { answer } from '../screen/screenDoubles.ts';
import { settle } from '../settle.ts';
import { ShownDesk } from './shownDesk.tsx';

let desk: ShownDesk;

// Desks that are left standing would hear the keys too.
afterEach(cleanup);

beforeEach(() => {
  desk = new ShownDesk();
  desk.take();
});

const hand = () => desk.desk.screen;

async function follow(said: Partial<ScreenView> = {}): Promise<void> {
  await act(async () => {
    await desk.model.screen.choose();
    await desk.model.screen.follow();
    hand().tick(100);
    await settle();
    hand().post.reply(answer(said));
    await settle();
  });
}

const held = { status: 'unsure', held: [{ cell: 'r4c7', text: 'r4c7 is hard to read: 7?' }] } as const;
const asked = { status: held.status, held: [...held.held] };

test('the foot of the desk says how following goes', async () => {
  expect(desk.all('.sign.screen')).toEqual([]);
  await follow();
  expect(desk.at('.sign.screen').textContent).toBe('Following the screen');

  act(() => hand().end());
  expect(desk.at('.sign.screen').textContent).toBe('Screen lost');
});

test.each([
  ['gridNotFound', 'Grid not found'],
  ['unsure', 'Reading unsure'],
  ['otherPuzzle', 'Another puzzle on the screen'],
] as const)('%s is %s', async (status, words) => {
  await follow({ status });
  expect(desk.at('.sign.screen').textContent).toBe(words);
});

test.each([
  ['4', 'ReadAs "r4c7" 4'],
  ['Backspace', 'ReadAs "r4c7" 0'],
  ['Enter', 'AcceptReading "r4c7"'],
])('while a cell waits and nothing else has the focus, %s alone answers', async (key, call) => {
  await follow(asked);
  const region = desk.at('.screen-call.held');
  expect(document.activeElement).toBe(region);
  desk.key(key, region);

  expect(desk.made.slice(1)).toEqual([call]);
});

test('whoever is on the board stays there, and M goes to the cell that waits', async () => {
  desk.cellAt('r1c2').focus();
  await follow(asked);
  expect(document.activeElement).toBe(desk.cellAt('r1c2'));

  desk.key('m', desk.cellAt('r1c2'));
  expect(document.activeElement).toBe(desk.at('.screen-call.held'));
  expect(desk.model.dialog.value).toBeNull();
});

test('Escape at the cell that waits still clears the air', async () => {
  await follow(asked);
  desk.key('Escape', desk.at('.screen-call.held'));

  expect(desk.made.at(-1)).toBe('ClearAir');
});

test('another puzzle is loaded by a button, and a difference taken over by one', async () => {
  await follow({ status: 'otherPuzzle', otherGivens: 27 });
  expect(desk.at('.screen-call').textContent).toContain('27 givens');
  desk.button('Load it').click();
  expect(desk.made.at(-1)).toBe('LoadFromScreen');

  await follow({ apart: ['r1c1', 'r1c2', 'r1c3', 'r1c4', 'r1c5', 'r1c6'] });
  expect(desk.at('.screen-call').textContent).toContain('r1c1, r1c2, r1c3, r1c4 and 2 more');
  desk.button('Take what').click();
  expect(desk.made.at(-1)).toBe('TakeScreen');
});

test('J loads the other puzzle and I takes a difference over, each only while that is offered', async () => {
  await follow();
  desk.key('j');
  desk.key('i');
  expect(desk.made).toEqual(['FollowScreen "page" true']);

  await follow({ status: 'otherPuzzle', otherGivens: 27 });
  desk.key('i');
  desk.key('j');
  expect(desk.made.at(-1)).toBe('LoadFromScreen');
  expect(desk.button('Load it').getAttribute('aria-keyshortcuts')).toBe('J');

  await follow({ apart: ['r1c1'] });
  desk.key('j');
  desk.key('i');
  expect(desk.made.at(-1)).toBe('TakeScreen');
  expect(desk.button('Take what').getAttribute('aria-keyshortcuts')).toBe('I');
});

test('while a reading waits, what differs is not taken over by its key', async () => {
  await follow({ ...asked, apart: ['r1c1'] });
  const before = desk.made.length;
  desk.key('i');
  expect(desk.made.length).toBe(before);
});

test('a panel that the browser held back says so, until following begins anew', async () => {
  await follow();
  expect(desk.all('.screen-call')).toEqual([]);
  act(() => {
    for (let second = 0; second < 4; second++) hand().tick(1000);
  });
  expect(desk.at('.screen-call').textContent).toContain('held this panel back');

  await follow();
  expect(desk.all('.screen-call')).toEqual([]);
});

test('? lists the keys of what the screen offers', () => {
  desk.key('?');
  const list = desk.at('.keys-dialog').textContent;
  expect(list).toContain('JLoad the other puzzle that is on the screen');
  expect(list).toContain('ITake what is on the screen');
});

test('M opens the dialog, in which the screen is chosen and the corners moved by arrow keys', async () => {
  desk.key('m');
  expect(desk.at('.screen-dialog').textContent).toContain('nothing of them is stored');
});

test('a co-host has neither button nor key', () => {
  desk.take({ role: 'coHost' });
  expect(desk.all('button').some((each) => each.textContent?.startsWith('My screen'))).toBe(false);
  desk.key('m');
  expect(desk.model.dialog.value).toBeNull();
});
