import { beforeEach, expect, test } from 'vitest';
import type { Cue } from '../../src/wire.ts';
import { deduction, deskView, picture } from '../drawn.ts';
import { settle } from '../settle.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;
const a = deduction('a');
const b = deduction('b', { rule: 'x-wing', name: 'X-wing' });
const c = deduction('c', { rule: 'x-wing', name: 'X-wing' });

const cueOf = (its: typeof a): Cue => ({
  deduction: its,
  grade: 1,
  hints: { where: '', what: '', which: '', why: '' },
  picture: picture(''),
});

beforeEach(() => {
  desk = new LoneDesk();
  desk.model.takeDesk(deskView({ sequence: 5 }));
  desk.model.takeNext({ sequence: 5, blocked: null, goesOn: false, deductions: [a, b, c] });
});

const next = () => desk.model.next;

test('stepping goes through the list and stops at its ends', () => {
  next().step(1);
  next().step(1);
  next().step(1);
  next().step(1);
  next().step(-1);

  expect(desk.made).toEqual(['StandBy "a"', 'StandBy "b"', 'StandBy "c"', 'StandBy "b"']);
});

test('stepping back from nothing begins at the end', () => {
  next().step(-1);

  expect(desk.made).toEqual(['StandBy "c"']);
});

test('stepping keeps to what the filter leaves', () => {
  next().show('x-wing');
  next().step(1);
  next().step(1);

  expect(desk.made).toEqual(['StandBy "b"', 'StandBy "c"']);
});

test('what was asked for is shown as chosen before the view confirms it', () => {
  void next().standBy('b');
  expect(next().chosen.value).toBe('b');

  desk.model.takeDesk(deskView({ sequence: 6, standby: cueOf(b) }));
  expect(next().chosen.value).toBe('b');

  desk.model.takeDesk(deskView({ sequence: 7, standby: cueOf(c) }));
  expect(next().chosen.value).toBe('c');
});

test('a refused choice is taken back', async () => {
  desk.calls.refusals.set('StandBy', 'It is not open any more.');
  void next().standBy('b');
  await settle();

  expect(next().chosen.value).toBeNull();
  expect(desk.model.asking.said.value).toBe('It is not open any more.');
});

test('a list of an earlier state than the board says so', () => {
  expect(next().isBehind.value).toBe(false);

  desk.model.takeDesk(deskView({ sequence: 6, scanOf: 5 }));
  expect(next().isBehind.value).toBe(false);

  desk.model.takeDesk(deskView({ sequence: 7, scanOf: 7 }));
  expect(next().isBehind.value).toBe(true);
});

test('a rule that nothing is open for any more no longer narrows the list', () => {
  next().show('x-wing');
  desk.model.takeNext({ sequence: 7, blocked: null, goesOn: false, deductions: [a] });

  expect(next().rule.value).toBe('');
  expect(next().found.value).toEqual([a]);
});

test('a list that is not finished says so, and narrows nothing', () => {
  next().show('x-wing');
  desk.model.takeNext({ sequence: 5, blocked: null, goesOn: true, deductions: [a] });

  expect(next().isBehind.value).toBe(true);
  expect(next().rule.value).toBe('x-wing');
});

test('said or used is what stands by, else what is on air', () => {
  desk.model.takeDesk(deskView({ sequence: 6, onAir: cueOf(c) }));
  next().markUsed();
  desk.model.takeDesk(deskView({ sequence: 7, onAir: cueOf(c), standby: cueOf(b) }));
  next().markUsed();

  expect(desk.made).toEqual(['MarkUsed "c"', 'MarkUsed "b"']);
});
