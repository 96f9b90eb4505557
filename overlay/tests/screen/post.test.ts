import { expect, test } from 'vitest';
import { ServerPost } from '../../src/screen/post.ts';

const picture = new Blob(['picture']);

function server(status: number, body: string, asked: string[] = []): typeof fetch {
  return (address, request) => {
    asked.push(`${request?.method} ${String(address)}`);
    return Promise.resolve(new Response(body, { status }));
  };
}

test('a picture of the grid is posted with its corners', async () => {
  const asked: string[] = [];
  const posted = await new ServerPost(server(200, '{"status":"following"}', asked)).look(
    'page',
    [1, 2.005, 3, 4],
    picture,
  );

  expect(asked).toEqual(['POST /hubs/presenter/screen?page=page&corners=1.00,2.00,3.00,4.00']);
  expect(posted).toEqual({ kind: 'answer', answer: { status: 'following' } });
});

test('a whole picture is posted elsewhere', async () => {
  const asked: string[] = [];
  await new ServerPost(server(200, '{"corners":null}', asked)).find(picture);

  expect(asked).toEqual(['POST /hubs/presenter/screen/grid']);
});

test.each([429, 500, 503])('after %s it is tried later', async (status) => {
  expect(await new ServerPost(server(status, 'Later.')).look('page', [], picture)).toEqual({ kind: 'later' });
});

test.each([400, 401, 403, 409])('%s ends it with the sentence of the server', async (status) => {
  expect(await new ServerPost(server(status, 'No.\n')).look('page', [], picture)).toEqual({
    kind: 'refused',
    sentence: 'No.',
  });
});

test('a server that is away is tried later', async () => {
  const away = () => Promise.reject(new TypeError('Failed to fetch'));
  expect(await new ServerPost(away).find(picture)).toEqual({ kind: 'later' });
});
