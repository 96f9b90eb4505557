import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { callWords, measuredWords } from '../../src/desk/viewers/words.ts';
import type { CellCalls, ViewersView } from '../../src/wire.ts';
import { picture } from '../drawn.ts';
import { settle } from '../settle.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

const calls: CellCalls[] = [
  { cell: 'r1c2', viewers: 3, named: 3, right: 2, standing: null, earlier: null },
  { cell: 'r9c9', viewers: 12, named: 5, right: 0, standing: null, earlier: null },
];

const view = (said: Partial<ViewersView> = {}): ViewersView => ({
  sequence: 1,
  limits: { open: true, highest: 4, quietOnAir: false },
  delay: { seconds: 15, least: 2, most: 15 },
  code: null,
  measured: null,
  measuredViewers: 0,
  answers: 7,
  calls: [],
  ...said,
});

const take = (said: Partial<ViewersView> = {}) => act(() => shown.model.takeViewers(view(said)));
const named = (words: string): HTMLElement => {
  const found = shown
    .all('dialog button, dialog label')
    .find((each) => each.textContent?.trim().startsWith(words));
  if (!found) throw new Error(`There is nothing called ${words}.`);
  return found;
};
const press = (words: string) =>
  act(async () => {
    fireEvent.click(named(words).querySelector('input') ?? named(words));
    await settle();
  });

beforeEach(() => {
  shown = new ShownDesk();
  shown.take();
  take();
  shown.key('v');
});

afterEach(cleanup);

test('V opens what there is to say of viewers', () => {
  expect(shown.at('dialog').textContent).toContain('7 answers since the start. Names are not kept.');
});

test('a limit is changed alone and the others stay', async () => {
  take({ limits: { open: true, highest: 3, quietOnAir: true } });
  await press('2 what');
  await press('Quiet');
  await press('Answer viewers');

  expect(shown.made).toEqual(['LimitAsks true 2 true', 'LimitAsks true 3 false', 'LimitAsks false 3 true']);
});

test('the delay is typed and set, and shown as the server has it', async () => {
  const field = shown.at('dialog input[type="number"]') as HTMLInputElement;
  expect(field.value).toBe('15');
  act(() => {
    fireEvent.input(field, { target: { value: '22' } });
  });
  await shown.submit('dialog .delay form');
  expect(shown.made).toEqual(['SetDelay 22']);

  take({ delay: { seconds: 22, least: 2, most: 22 } });
  expect(field.value).toBe('22');
});

test('a code is shown, hidden, and what it measured is taken over', async () => {
  await press('Show a code');
  take({ code: 'kdfr', measured: { seconds: 12, least: 9.4, most: 15.1 }, measuredViewers: 3 });
  expect(shown.at('dialog').textContent).toContain('kdfr is on the overlay');
  await press('Hide the code');
  await press('Use 12 s');

  expect(shown.made).toEqual(['ShowDelayCode', 'HideDelayCode', 'UseMeasuredDelay']);
});

test('calls are listed, and on the board only when that is wanted', async () => {
  take({ calls });
  expect(shown.all('.calls li').map((each) => each.textContent)).toEqual([
    'r1c2 3 viewers, 2 right',
    'r9c9 12 viewers, 0 right',
  ]);
  expect(shown.page.querySelector('.call-counts')).toBeNull();

  await press('Show on this board');
  expect(shown.all('.call-counts text').map((each) => each.textContent)).toEqual(['3', '✓2', '12']);
  expect(shown.cellAt('r1c2').getAttribute('aria-label')).toContain('called by 3 viewers, 2 right');
});

test('at the end of the show viewers are forgotten, and it is said that it was ended', async () => {
  expect(shown.at('dialog footer').textContent).not.toContain('ended');
  await press('End of the show');
  shown.take({ isOver: true });

  expect(shown.made).toEqual(['EndShow']);
  expect(shown.at('dialog footer [role=status]').textContent).toContain('The show was ended');
});

test('a co-host sees all of it and changes nothing', () => {
  shown.take({ role: 'coHost' });

  expect(shown.all('dialog fieldset').map((each) => (each as HTMLFieldSetElement).disabled)).toEqual([
    true,
    true,
  ]);
  expect((named('End of the show') as HTMLButtonElement).disabled).toBe(true);
});

test.each([
  [{ standing: null, earlier: null }, '5 viewers, 2 right'],
  [{ standing: 'first', earlier: 40.7 }, '5 viewers, 2 right; the chat found it 40 s earlier'],
  [{ standing: 'first', earlier: -1.5 }, '5 viewers, 2 right; the chat found it first'],
  [{ standing: 'close', earlier: -3 }, '5 viewers, 2 right; too close to tell who was first'],
  [{ standing: 'after', earlier: -20 }, '5 viewers, 2 right; after the entry'],
] as const)('who was first: %o', (said, words) => {
  expect(callWords({ cell: 'r1c1', viewers: 5, named: 4, right: 2, ...said })).toBe(words);
});

test('what was measured is said with how far viewers differ', () => {
  expect(measuredWords(null, 0)).toContain('Not measured');
  expect(measuredWords({ seconds: 12, least: 12, most: 12 }, 1)).toBe('Measured with one viewer: 12 s.');
  expect(measuredWords({ seconds: 12, least: 9.4, most: 15.1 }, 3)).toBe(
    'Measured with 3 viewers: 12 s, from 9 to 16 s.',
  );
});

test('a co-host has the calls in sight without opening anything', () => {
  act(() => shown.model.close());
  shown.take({ role: 'coHost' });
  take({ calls });

  expect(shown.at('.viewers-area header').textContent).toBe('Viewers7 answers');
  expect(shown.all('.viewers-area li').map((each) => each.textContent)).toEqual([
    'r1c2 3 viewers, 2 right',
    'r9c9 12 viewers, 0 right',
  ]);
});

test('H shows on the board what is called, and hides it', () => {
  act(() => shown.model.close());
  take({ calls });
  shown.key('h');
  expect(shown.all('.call-counts text')).toHaveLength(3);

  shown.key('h');
  expect(shown.page.querySelector('.call-counts')).toBeNull();
});

test('the called cells stand by with F or by a button, and are shown as what they are', async () => {
  take({ calls });
  await press('Stand by the cells');
  act(() => shown.model.close());
  shown.key('f');
  expect(shown.made).toEqual(['StandByCalls', 'StandByCalls']);

  const called = { cells: 2, picture: picture('Found here', { kind: 'called', x: 1, y: 0, count: '2+' }) };
  shown.take({ calledStandby: called });
  expect(shown.at('.cue').textContent).toContain('Stands by: 2 cells that viewers call');
  expect(shown.button('On air: 2 cells that viewers call').disabled).toBe(false);
  expect(shown.all('.board .called text').map((each) => each.textContent)).toEqual(['2+']);

  shown.take({ calledOnAir: called });
  expect(shown.at('.words-now').textContent).toBe('2 cells that viewers callFound here');
  expect(shown.all('.mirror .called')).toHaveLength(1);
  expect(shown.button('Back').title).toBe('Off air');
});

test('a co-host who may not put anything on air has called cells not stand by either', () => {
  shown.take({ role: 'coHost' });
  take({ calls });
  act(() => shown.model.close());
  shown.key('f');

  expect(shown.made).toEqual([]);
});

test('where nobody named a digit nobody can be wrong', () => {
  const call = { cell: 'r1c1', named: 0, right: 0, standing: null, earlier: null };
  expect(callWords({ ...call, viewers: 1 })).toBe('1 viewer, no digit named');
  expect(callWords({ ...call, viewers: 7, named: 1 })).toBe('7 viewers, 0 right');
});
