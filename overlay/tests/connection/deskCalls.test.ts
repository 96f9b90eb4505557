import { beforeEach, expect, test } from 'vitest';
import { DeskCalls } from '../../src/connection/deskCalls.ts';
import { settle } from '../settle.ts';

/** Writes down what it is given and answers only when told. */
class SlowSender {
  readonly sent: string[] = [];
  readonly answers: ((reply: unknown) => void)[] = [];
  isCut = false;

  invoke(method: string, ...args: unknown[]): Promise<unknown> {
    this.sent.push([method, ...args].join(' '));
    if (this.isCut) return Promise.reject(new Error('cut'));
    return new Promise((resolve) => this.answers.push(resolve));
  }
}

let sender: SlowSender;
let calls: DeskCalls;

beforeEach(() => {
  sender = new SlowSender();
  calls = new DeskCalls(sender);
});

test('keys go out in order without waiting for each other', () => {
  calls.open();
  void calls.call('PlaceDigit', 'r1c1', 5);
  void calls.call('PlaceDigit', 'r1c2', 6);
  void calls.call('Undo');

  expect(sender.sent).toEqual(['PlaceDigit r1c1 5', 'PlaceDigit r1c2 6', 'Undo']);
});

test('entries wait for the connection and then go out in order, before any other', () => {
  void calls.call('PlaceDigit', 'r1c1', 5);
  void calls.call('SettleMarks');
  void calls.call('EraseCells', ['r1c2']);
  expect(sender.sent).toEqual([]);
  expect(calls.waiting.value).toBe(2);

  calls.open();
  void calls.call('Undo');
  expect(sender.sent).toEqual(['PlaceDigit r1c1 5', 'SettleMarks', 'EraseCells r1c2', 'Undo']);
  expect(calls.waiting.value).toBe(0);
});

test('nothing appears on air late, but the air is cleared late', async () => {
  const reply = await calls.call('NextGrade');
  void calls.call('ClearAir');
  expect(reply.refusal).toMatch(/not connected/i);

  calls.open();
  expect(sender.sent).toEqual(['ClearAir']);
});

test('no puzzle is loaded behind the back of the presenter', async () => {
  expect((await calls.call('LoadPuzzle', '', '', '', '')).refusal).not.toBeNull();
  expect((await calls.call('ClearGrid')).refusal).not.toBeNull();
});

test('a call that was cut off is not sent again, and says so', async () => {
  calls.open();
  sender.isCut = true;
  const reply = await calls.call('ToggleStrike', ['r1c1'], 4);
  calls.close();
  sender.isCut = false;
  calls.open();

  expect(reply.refusal).toMatch(/connection broke/i);
  expect(sender.sent).toEqual(['ToggleStrike r1c1 4']);
});

test('the reply of the server comes back as it is', async () => {
  calls.open();
  const asked = calls.call('Undo');
  sender.answers[0]?.({ refusal: 'There is nothing to take back.', sequence: 7 });
  await settle();

  expect(await asked).toEqual({ refusal: 'There is nothing to take back.', sequence: 7 });
});
