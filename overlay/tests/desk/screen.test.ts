import { beforeEach, expect, test } from 'vitest';
import { deskView } from '../drawn.ts';
import { answer, type HandScreen } from '../screen/screenDoubles.ts';
import { settle } from '../settle.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;
let hand: HandScreen;

beforeEach(() => {
  desk = new LoneDesk();
  desk.model.takeDesk(deskView());
  hand = desk.screen;
});

const screen = () => desk.model.screen;

async function following(): Promise<void> {
  await screen().choose();
  await screen().follow();
}

/** Time goes on, the page looks, and the server answers. */
async function look(said: Parameters<typeof answer>[0] = {}, milliseconds = 100): Promise<void> {
  hand.tick(milliseconds);
  await settle();
  hand.post.reply(answer(said));
  await settle();
}

test('a screen is chosen, its grid found, and nothing sent to be read before it is accepted', async () => {
  await screen().choose();

  expect(screen().phase.value).toBe('placing');
  expect(screen().isFound.value).toBe(true);
  expect(screen().corners.value?.[2]).toEqual({ x: 640, y: 640 });
  expect(hand.capture.taken).toEqual(['0,0 1000x800 as 1000x800']);
  expect([hand.beats, hand.post.looks.length, desk.made]).toEqual([0, 0, []]);
});

test('a screen on which nothing changes shows its first picture late, and is waited for', async () => {
  hand.isReadyAtOnce = false;
  void screen().choose();
  await settle();
  for (let count = 0; count < 10; count++) hand.tick();
  await settle();
  expect([screen().phase.value, screen().isFound.value, hand.post.finds]).toEqual(['placing', null, 0]);

  hand.capture.isReady = true;
  hand.tick();
  await settle();
  expect([screen().isFound.value, hand.beats]).toEqual([true, 0]);
});

test('a screen that is stopped before its first picture is waited for no more', async () => {
  hand.isReadyAtOnce = false;
  void screen().choose();
  await settle();
  screen().stop();
  hand.tick();
  await settle();

  expect([screen().phase.value, hand.beats, hand.post.finds]).toEqual(['off', 0, 0]);
});

test('where no grid is found the corners are set by hand', async () => {
  hand.post.found = { kind: 'answer', answer: { corners: null } };
  await screen().choose();
  expect(screen().isFound.value).toBe(false);

  screen().moveCorner(0, -10, 5);
  expect(screen().corners.value?.[0]).toEqual({ x: 170, y: 85 });
});

test('only the grid is sent, with its corners, and only when it has changed', async () => {
  await following();
  await look();
  expect(desk.made).toEqual(['FollowScreen "page" true']);
  expect(hand.post.looks).toEqual(['page 23,23,562,23,562,562,23,562']);
  expect(hand.capture.taken.at(-1)).toBe('77,77 586x586 as 585x585');

  for (let count = 0; count < 50; count++) await look();
  expect(hand.post.looks.length).toBe(1);
  hand.capture.shows = 99;
  await look({ again: 50 });
  await look();
  expect(hand.post.looks.length).toBe(3);
});

test('what has changed alone is sent, and nothing of a picture that is looked at twice', async () => {
  await following();
  await look();
  hand.capture.shows = 99;
  await look({ again: 50 });
  await look();

  expect(hand.post.sent).toEqual([
    '1: image/png of 585x585 at 0,0',
    '2 of 1: image/png of 9x10 at 70,80',
    '3 of 2: ',
  ]);
});

test('a picture that the server has forgotten is sent at once as a whole', async () => {
  await following();
  await look();
  hand.capture.shows = 99;
  hand.tick(100);
  await settle();
  hand.post.reply({ kind: 'whole' });
  await settle();
  expect(screen().isReached.value).toBe(true);
  await look({}, 33);

  expect(hand.post.sent.slice(1)).toEqual([
    '2 of 1: image/png of 9x10 at 70,80',
    '3: image/png of 585x585 at 0,0',
  ]);
});

test('after a picture that nothing came of, after a pause and when it begins anew, a whole one is sent', async () => {
  await following();
  await look();
  hand.capture.shows = 99;
  hand.tick(100);
  await settle();
  hand.post.reply({ kind: 'later' });
  await settle();
  await look({}, 600);
  await screen().follow();
  await look();

  expect(hand.post.sent.slice(2)).toEqual([
    '3: image/png of 585x585 at 0,0',
    '4: image/png of 585x585 at 0,0',
  ]);
});

test('while a picture is on its way no other is sent', async () => {
  await following();
  for (let count = 0; count < 20; count++) {
    hand.capture.shows += 12;
    hand.tick(100);
    await settle();
  }
  expect(hand.post.looks.length).toBe(1);
});

test('when it is stopped the screen is given back and nothing more is sent', async () => {
  await following();
  await look();
  screen().stop();
  hand.capture.shows = 99;
  await look();

  expect(hand.capture.isStopped).toBe(true);
  expect([screen().phase.value, hand.beats, hand.post.looks.length]).toEqual(['off', 0, 1]);
  expect(desk.made.at(-1)).toBe('StopFollowing "page"');
});

test('when the browser ends it that is said', async () => {
  await following();
  hand.end();

  expect([screen().phase.value, hand.beats, hand.capture.isStopped]).toEqual(['lost', 0, true]);
});

test('a screen that is chosen after another one takes its place', async () => {
  await following();
  const first = hand.capture;
  const ended = hand.end.bind(hand);
  await screen().choose();
  expect([first.isStopped, screen().phase.value]).toEqual([true, 'placing']);
  ended();
  expect(screen().phase.value).toBe('lost');
});

test('a browser that shows nothing is the reason that is given', async () => {
  hand.refuses = true;
  await screen().choose();

  expect(screen().phase.value).toBe('off');
  expect(screen().problem.value).toContain('no screen');
});

test('a page that the server lets follow no more stops with its sentence', async () => {
  await following();
  hand.tick();
  await settle();
  hand.post.reply({ kind: 'refused', sentence: 'This page does not follow the screen any more.' });
  await settle();

  expect([screen().phase.value, screen().problem.value]).toEqual([
    'off',
    'This page does not follow the screen any more.',
  ]);
  expect(hand.capture.isStopped).toBe(true);
});

test('a server that does not answer is tried again after a pause', async () => {
  await following();
  hand.tick();
  await settle();
  hand.post.reply({ kind: 'later' });
  await settle();
  expect(screen().isReached.value).toBe(false);

  hand.tick(100);
  expect(hand.post.looks.length).toBe(1);
  await look({}, 500);
  expect([hand.post.looks.length, screen().isReached.value]).toEqual([2, true]);
});

test('a grid that is lost is looked for every two seconds and followed where it is found', async () => {
  await following();
  hand.time = 10_000;
  hand.post.found = { kind: 'answer', answer: { corners: [0, 0, 540, 0, 540, 540, 0, 540] } };
  await look({ status: 'gridNotFound' });
  expect(hand.post.finds).toBe(2);
  expect(screen().corners.value?.[2]).toEqual({ x: 540, y: 540 });

  hand.capture.shows = 99;
  await look({ status: 'gridNotFound' });
  expect(hand.post.finds).toBe(2);
  await look({ status: 'gridNotFound' }, 2000);
  expect(hand.post.finds).toBe(3);
});

test('one word about the cell that is asked about goes to the server, and the grid is looked at again', async () => {
  await following();
  await look({ status: 'unsure', held: [{ cell: 'r4c7', text: 'r4c7 is hard to read: 7?' }] });
  screen().answer(4);
  screen().answer(0);
  screen().answer(null);
  await settle();
  await look();

  expect(desk.made.slice(1)).toEqual(['ReadAs "r4c7" 4', 'ReadAs "r4c7" 0', 'AcceptReading "r4c7"']);
  expect(hand.post.looks.length).toBe(2);
  screen().answer(5);
  expect(desk.made.length).toBe(4);
});

test('after an entry by hand the grid is looked at once more, though nothing has changed on the screen', async () => {
  await following();
  await look();
  await look({}, 1000);
  const before = hand.post.looks.length;
  const cells = deskView().cells.map((cell, at) => (at === 40 ? { ...cell, digit: 5 } : cell));
  desk.model.takeDesk(deskView({ cells }));
  await look({}, 100);
  expect(hand.post.looks.length).toBe(before);
  await look({}, 400);
  expect(hand.post.looks.length).toBe(before + 1);

  // The same board, as after a scan.
  desk.model.takeDesk(deskView({ cells, sequence: 9 }));
  await look({}, 1000);
  expect(hand.post.looks.length).toBe(before + 1);
});

test('marks can be left out, also while following', async () => {
  screen().followMarks(false);
  await following();
  screen().followMarks(true);
  await settle();

  expect(desk.made).toEqual(['FollowScreen "page" false', 'FollowScreen "page" true']);
});

test('a co-host is shown no screen', async () => {
  desk.model.takeDesk(deskView({ role: 'coHost' }));
  await screen().choose();

  expect([screen().phase.value, hand.captures.length]).toEqual(['off', 0]);
});

test('where the browser cannot, nothing is asked of it', async () => {
  hand.whyNot = 'Open the panel by https.';
  await screen().choose();

  expect(hand.captures.length).toBe(0);
});
