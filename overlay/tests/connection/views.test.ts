import { MessageType } from '@microsoft/signalr';
import { MessagePackHubProtocol } from '@microsoft/signalr-protocol-msgpack';
import { expect, test } from 'vitest';
import { Views } from '../../src/connection/views.ts';
import { deskView, picture } from '../drawn.ts';

/** Pushes what a test gives it to whoever listens. */
class PushingHub {
  readonly #heard = new Map<string, (view: never) => void>();

  on(method: string, callback: (view: never) => void): void {
    this.#heard.set(method, callback);
  }

  push(method: string, ...sequences: number[]): void {
    for (const sequence of sequences) this.#heard.get(method)?.({ sequence } as never);
  }
}

function watched() {
  const hub = new PushingHub();
  const views = new Views(hub);
  const seen: string[] = [];
  views.on('Desk', ({ sequence }) => seen.push(`desk ${sequence}`));
  views.on('Next', ({ sequence }) => seen.push(`next ${sequence}`));
  return { hub, views, seen };
}

test('a view older than the one shown is ignored, one as old is not', () => {
  const { hub, seen } = watched();
  hub.push('Desk', 4, 6, 5, 6, 7);

  expect(seen).toEqual(['desk 4', 'desk 6', 'desk 6', 'desk 7']);
});

test('each kind of view counts for itself', () => {
  const { hub, seen } = watched();
  hub.push('Desk', 9);
  hub.push('Next', 8);

  expect(seen).toEqual(['desk 9', 'next 8']);
});

test('on a new connection a restarted server may count anew', () => {
  const { hub, views, seen } = watched();
  hub.push('Desk', 90);
  views.startAnew();
  hub.push('Desk', 1, 2);

  expect(seen).toEqual(['desk 90', 'desk 1', 'desk 2']);
});

test('a view comes through MessagePack as the wire types say', () => {
  const protocol = new MessagePackHubProtocol();
  const logger = { log: () => {} };
  const view = deskView({
    sequence: 2 ** 40,
    standby: {
      deduction: {
        id: 'x',
        rule: 'xy-wing',
        name: 'XY-wing',
        short: 'x',
        sentence: 'X.',
        seconds: 1.5,
        cells: [{ cell: 'r4c7', role: 'pivot' }],
        digits: [1, 2],
        places: [],
        removes: [{ cell: 'r9c9', digit: 9 }],
        unseen: [],
        first: null,
        firstName: null,
        since: 0,
        assumesOneSolution: false,
      },
      grade: 3,
      hints: { where: 'a', what: 'b', which: 'c', why: 'd' },
      picture: picture('c', { kind: 'lozenge', x: 4.5, y: 0.5, digit: 5 }),
    },
  });
  const bytes = protocol.writeMessage({ type: MessageType.Invocation, target: 'Desk', arguments: [view] });

  const [message] = protocol.parseMessages(bytes as ArrayBuffer, logger);
  expect(message).toMatchObject({ target: 'Desk', arguments: [view] });
});
