import { beforeEach, expect, test } from 'vitest';
import { Pacer, pace, pause } from '../../src/screen/pacer.ts';

let pacer: Pacer;
const picture = (value: number) => new Uint8Array(16).fill(value);

beforeEach(() => {
  pacer = new Pacer();
});

test('the first picture is sent, and the same one not again', () => {
  expect(pacer.take(0, picture(0))).toBe(true);
  pacer.answered(20, null);
  for (let now = 20; now < 5000; now += 33) expect(pacer.take(now, picture(0))).toBe(false);
});

test('one is on its way at a time, and the newest comes after it', () => {
  pacer.take(0, picture(0));
  expect(pacer.take(500, picture(50))).toBe(false);
  expect(pacer.take(600, picture(100))).toBe(false);
  pacer.answered(700, null);
  expect(pacer.take(701, picture(100))).toBe(true);
  pacer.answered(720, null);
  expect(pacer.take(900, picture(100))).toBe(false);
});

test('changes are sent about ten times a second', () => {
  let sent = 0;
  for (let now = 0; now < 10_000; now += 33) {
    if (!pacer.take(now, picture(now % 250))) continue;
    sent++;
    pacer.answered(now + 20, null);
  }
  expect(sent).toBeGreaterThan(60);
  expect(sent).toBeLessThanOrEqual(10_000 / pace);
});

test('what the server wants to see again is sent then, changed or not', () => {
  pacer.take(0, picture(0));
  pacer.answered(20, 50);
  expect(pacer.take(49, picture(0))).toBe(false);
  expect(pacer.take(50, picture(0))).toBe(true);
  pacer.answered(90, 2000);
  expect(pacer.take(2049, picture(0))).toBe(false);
  expect(pacer.take(2050, picture(0))).toBe(true);
  // What took longer to read than that is seen again at once.
  pacer.answered(2350, 50);
  expect(pacer.take(2350, picture(0))).toBe(true);
});

test('a change comes before a wish that is far off, which then is the next answer to say', () => {
  pacer.take(0, picture(0));
  pacer.answered(20, 2000);
  expect(pacer.take(150, picture(90))).toBe(true);
  pacer.answered(170, null);
  expect(pacer.take(2100, picture(90))).toBe(false);
});

test('what the presenter says is seen at once', () => {
  pacer.take(0, picture(0));
  pacer.answered(20, null);
  pacer.hurry(30);
  expect(pacer.take(31, picture(0))).toBe(true);
});

test('what failed is sent again after a pause', () => {
  pacer.take(0, picture(0));
  pacer.failed(20);
  expect(pacer.take(19 + pause, picture(0))).toBe(false);
  expect(pacer.take(20 + pause, picture(0))).toBe(true);
});
