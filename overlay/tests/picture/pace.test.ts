import { beforeEach, expect, test } from 'vitest';
import { leastBetween, Pace } from '../../src/picture/pace.ts';
import { ShownPicture } from '../../src/picture/shown.ts';
import { picture } from '../drawn.ts';
import { HandClock } from './handClock.ts';

let clock: HandClock;
let shown: string[];
let pace: Pace<string>;

beforeEach(() => {
  clock = new HandClock();
  shown = [];
  pace = new Pace(
    (text) => shown.push(`${clock.now()} ${text}`.trim()),
    (text) => text === '',
    clock,
  );
});

test('the first picture appears at once', () => {
  pace.offer('a');

  expect(shown).toEqual(['0 a']);
});

test('of pictures that come too fast only the newest appears, when its time has come', () => {
  pace.offer('a');
  clock.pass(50);
  pace.offer('b');
  clock.pass(50);
  pace.offer('c');
  clock.pass(1000);

  expect(shown).toEqual(['0 a', `${leastBetween} c`]);
});

test('clearing is never held back, and nothing held back appears after it', () => {
  pace.offer('a');
  clock.pass(10);
  pace.offer('b');
  clock.pass(10);
  pace.offer('');
  clock.pass(1000);

  expect(shown).toEqual(['0 a', '20']);
});

test('however wildly keys are pressed, no more than three pictures appear in any second', () => {
  for (let press = 0; press < 400; press++) {
    pace.offer(press % 2 === 0 ? `picture ${press}` : '');
    clock.pass(7);
  }
  const appeared = shown.filter((line) => line.includes('picture')).map((line) => Number(line.split(' ')[0]));

  expect(appeared.length).toBeGreaterThan(5);
  for (const [index, at] of appeared.entries()) {
    expect((appeared[index + 3] ?? Number.POSITIVE_INFINITY) - at).toBeGreaterThan(1000);
  }
});

test('a view that repeats its picture does not count as a change', () => {
  const screen = new ShownPicture(clock);
  screen.offer(picture('a'));
  const first = screen.picture.value;
  clock.pass(leastBetween);
  screen.offer(picture('a'));

  expect(screen.picture.value).toBe(first);
});

test('a picture that nobody can take off any more goes by itself', () => {
  const screen = new ShownPicture(clock);
  screen.offer(picture('a'));
  screen.lose();
  clock.pass(4000);
  expect(screen.picture.value?.caption).toBe('a');

  clock.pass(2000);
  expect(screen.picture.value).toBeNull();
});

test('a line that comes back in time leaves the picture alone', () => {
  const screen = new ShownPicture(clock);
  screen.offer(picture('a'));
  screen.lose();
  clock.pass(1000);
  screen.offer(picture('a'));
  clock.pass(10_000);

  expect(screen.picture.value?.caption).toBe('a');
});
