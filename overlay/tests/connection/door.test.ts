import { expect, test } from 'vitest';
import { Door } from '../../src/connection/door.ts';

type Post = typeof fetch;

/** Answers every request alike and writes down what was asked. */
function answering(status: number, text = '', type = 'text/plain; charset=utf-8') {
  const asked: string[] = [];
  const post: Post = (address, request) => {
    asked.push(`${request?.method} ${String(address)} ${String(request?.body ?? '')}`.trim());
    const hasNoBody = status === 204;
    return Promise.resolve(
      new Response(hasNoBody ? null : text, { status, headers: { 'content-type': type } }),
    );
  };
  return { asked, post };
}

test('a key is changed into a cookie at the door', async () => {
  const { asked, post } = answering(204);
  const door = new Door({ key: 'secret', isNew: true }, '/hubs/desk', post);
  expect(door.isShut).toBe(true);

  expect(await door.knock()).toEqual({ kind: 'open' });
  expect(asked).toEqual(['POST /enter {"key":"secret","hub":"/hubs/desk"}']);
  expect(door.isShut).toBe(false);
});

test('the door is told which hub is wanted, without what is asked of the hub', async () => {
  const { asked, post } = answering(204);
  await new Door({ key: 'secret', isNew: true }, '/hubs/overlay?page=stage', post).knock();

  expect(asked).toEqual(['POST /enter {"key":"secret","hub":"/hubs/overlay"}']);
});

test.each([401, 403])('%i is a refusal in the words of the server', async (status) => {
  const { post } = answering(status, 'Open the newest link.\n');
  const door = new Door({ key: 'old', isNew: true }, '/hubs/desk', post);

  expect(await door.knock()).toEqual({ kind: 'refused', sentence: 'Open the newest link.' });
  expect(door.isShut).toBe(true);
});

test('a refusal that is not plain text is put in words of our own', async () => {
  const { post } = answering(401, '<html>', 'text/html');
  const answer = await new Door({ key: 'old', isNew: false }, '/hubs/desk', post).knock();

  expect(answer).toEqual({ kind: 'refused', sentence: expect.stringContaining('terminal') as string });
});

test('without a key the hub itself is asked whether the cookie still opens it', async () => {
  const { asked, post } = answering(200);
  const door = new Door({ key: null, isNew: false }, '/hubs/overlay?page=overlay&scene=main', post);

  expect(await door.knock()).toEqual({ kind: 'open' });
  expect(asked).toEqual(['POST /hubs/overlay/negotiate?negotiateVersion=1&page=overlay&scene=main']);
});

test.each([429, 500, 503])('%i is no refusal: the server is not itself', async (status) => {
  const { post } = answering(status);
  const door = new Door({ key: 'good', isNew: true }, '/hubs/desk', post);

  expect(await door.knock()).toEqual({ kind: 'unreachable' });
  expect(door.isShut).toBe(true);
});

test('a server that does not answer is no refusal', async () => {
  const post: Post = () => Promise.reject(new TypeError('network'));

  expect(await new Door({ key: 'good', isNew: true }, '/hubs/desk', post).knock()).toEqual({
    kind: 'unreachable',
  });
});

test('that as many are there as may be is said in the words of the server', async () => {
  const { post } = answering(503, 'There is no room.');

  expect(await new Door({ key: null, isNew: false }, '/hubs/audience', post).knock()).toEqual({
    kind: 'refused',
    sentence: 'There is no room.',
  });
});

test('a key that was changed before is no longer the question: the hub itself is asked as well', async () => {
  const { asked, post } = answering(200);
  const door = new Door({ key: 'secret', isNew: false }, '/hubs/audience?viewer=a', post);

  expect(await door.knock()).toEqual({ kind: 'open' });
  expect(asked).toEqual([
    'POST /enter {"key":"secret","hub":"/hubs/audience"}',
    'POST /hubs/audience/negotiate?negotiateVersion=1&viewer=a',
  ]);
});
