import { expect, test } from 'vitest';
import { ServerPost } from '../../src/screen/post.ts';

const picture = new Blob(['picture']);
const sent = { number: 1, corners: [], change: null, file: picture };

function server(status: number, body: string, asked: string[] = []): typeof fetch {
  return (address, request) => {
    asked.push(`${request?.method} ${String(address)}`);
    return Promise.resolve(new Response(body, { status }));
  };
}

test('a picture of the grid is posted with its corners', async () => {
  const asked: string[] = [];
  const post = new ServerPost(server(200, '{"status":"following"}', asked));
  const posted = await post.look('page', { ...sent, corners: [1, 2.005, 3, 4] });

  expect(asked).toEqual(['POST /hubs/presenter/screen?page=page&picture=1&corners=1.00,2.00,3.00,4.00']);
  expect(posted).toEqual({ kind: 'answer', answer: { status: 'following' } });
});

test('a change says what of, and where it is', async () => {
  const asked: string[] = [];
  const change = { of: 1, left: 7, top: 8 };
  await new ServerPost(server(200, '{}', asked)).look('page', { ...sent, number: 2, corners: [1], change });

  expect(asked).toEqual(['POST /hubs/presenter/screen?page=page&picture=2&corners=1.00&of=1&at=7,8']);
});

test('where the server has forgotten the picture it wants the whole one', async () => {
  expect(await new ServerPost(server(412, 'Forgotten.')).look('page', sent)).toEqual({ kind: 'whole' });
});

test('a whole picture is posted elsewhere', async () => {
  const asked: string[] = [];
  await new ServerPost(server(200, '{"corners":null}', asked)).find(picture);

  expect(asked).toEqual(['POST /hubs/presenter/screen/grid']);
});

test.each([429, 500, 503])('after %s it is tried later', async (status) => {
  expect(await new ServerPost(server(status, 'Later.')).look('page', sent)).toEqual({ kind: 'later' });
});

test.each([400, 401, 403, 409])('%s ends it with the sentence of the server', async (status) => {
  expect(await new ServerPost(server(status, 'No.\n')).look('page', sent)).toEqual({
    kind: 'refused',
    sentence: 'No.',
  });
});

test('a server that is away is tried later', async () => {
  const away = () => Promise.reject(new TypeError('Failed to fetch'));
  expect(await new ServerPost(away).find(picture)).toEqual({ kind: 'later' });
});
