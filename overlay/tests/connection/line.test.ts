import { beforeEach, expect, test } from 'vitest';
import { Line } from '../../src/connection/line.ts';
import { settle } from '../settle.ts';
import { ScriptedDoor, ScriptedHub, WrittenWaiting } from './doubles.ts';

let hub: ScriptedHub;
let door: ScriptedDoor;
let waiting: WrittenWaiting;
let line: Line;
let ends: string[];

beforeEach(() => {
  hub = new ScriptedHub();
  door = new ScriptedDoor();
  waiting = new WrittenWaiting();
  line = new Line(hub, door, waiting);
  ends = [];
});

async function keepOpen(): Promise<void> {
  void line.keepOpen({
    opening: () => ends.push('opening'),
    opened: () => ends.push('opened'),
    closed: () => ends.push('closed'),
  });
  await settle();
}

test('a line that finds its hub is connected at once', async () => {
  await keepOpen();
  await waiting.pass();

  expect(line.state.value).toBe('connected');
  expect(waiting.waits).toEqual([0]);
  expect(ends).toEqual(['opening', 'opened']);
});

test('a first start that fails is tried again without end', async () => {
  hub.isAway = true;
  await keepOpen();
  for (let time = 0; time < 200; time++) await waiting.pass();

  expect(hub.starts).toBe(200);
  expect(waiting.waits.length).toBe(201);

  hub.isAway = false;
  await waiting.pass();
  expect(line.state.value).toBe('connected');
});

test('after a sound connection the next try comes at once', async () => {
  await keepOpen();
  await waiting.pass();
  waiting.time += 10_000;
  hub.drop();
  await settle();

  expect(line.state.value).toBe('reconnecting');
  expect(waiting.waits.at(-1)).toBe(0);
  expect(ends).toEqual(['opening', 'opened', 'closed']);

  await waiting.pass();
  expect(line.state.value).toBe('connected');
});

test('a hub that drops each connection at once is not called upon without pause', async () => {
  await keepOpen();
  for (let time = 0; time < 5; time++) {
    await waiting.pass();
    hub.drop();
    await settle();
  }

  expect(waiting.waits).toEqual([0, 250, 500, 1000, 2000, 2500]);
});

test('with a new key the line enters before it starts', async () => {
  door.isShut = true;
  door.answers.push({ kind: 'unreachable' });
  await keepOpen();
  await waiting.pass();
  expect(hub.starts).toBe(0);

  await waiting.pass();
  expect(door.knocks).toBe(2);
  expect(line.state.value).toBe('connected');
});

test('a refusal is shown in its own words and does not stop the tries', async () => {
  door.isShut = true;
  door.answers.push({ kind: 'refused', sentence: 'This link is not valid any more.' });
  await keepOpen();
  await waiting.pass();

  expect(line.state.value).toBe('refused');
  expect(line.refusal.value).toBe('This link is not valid any more.');

  await waiting.pass();
  expect(line.state.value).toBe('connected');
  expect(line.refusal.value).toBe('');
});

test('a start that fails makes the line knock again, as the server may have forgotten it', async () => {
  await keepOpen();
  await waiting.pass();
  waiting.time += 10_000;
  hub.isAway = true;
  hub.drop();
  await settle();
  await waiting.pass();

  expect(door.knocks).toBe(1);
});
