import { signal } from '@preact/signals';
import { act, cleanup, fireEvent, render } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { AudiencePage } from '../../src/audience/AudiencePage.tsx';
import { AudienceModel } from '../../src/audience/model.ts';
import type { LineState } from '../../src/connection/line.ts';
import type { AudienceView } from '../../src/wireAudience.ts';
import { picture } from '../drawn.ts';
import { settle } from '../settle.ts';
import { audienceView, boardView, ScriptedServer } from './shown.ts';

let server: ScriptedServer;
let model: AudienceModel;
let page: Element;
const state = signal<LineState>('connected');
const refusal = signal('');

beforeEach(() => {
  server = new ScriptedServer();
  model = new AudienceModel(server);
  state.value = 'connected';
  refusal.value = '';
  page = render(<AudiencePage model={model} line={{ state, refusal }} />).container;
});

afterEach(cleanup);

const take = (said: Partial<AudienceView> = {}) => act(() => model.take(audienceView(said)));
const cell = (name: string) => page.querySelector<HTMLElement>(`[aria-label^="${name},"]`) as HTMLElement;
const button = (words: string) => {
  const found = [...page.querySelectorAll('button')].find(
    (each) => (each.getAttribute('aria-label') ?? each.textContent) === words,
  );
  if (!found) throw new Error(`There is no button ${words}.`);
  return found;
};
const press = (words: string) =>
  act(async () => {
    fireEvent.click(button(words));
    await settle();
  });
const answer = () => page.querySelector('.answer [role="status"]')?.textContent;

test('the page waits for the board and says how long that takes', () => {
  expect(page.textContent).toBe('Connecting…');

  take({ board: null, credit: null });
  expect(page.textContent).toBe(
    'The board comes 15 seconds after the presenter shows it, as on the picture.',
  );

  take({ board: null, credit: null, delaySeconds: 0 });
  expect(page.textContent).toBe('The presenter has no puzzle on the board yet.');
});

test('who is not let in reads why, and no board', () => {
  take();
  act(() => {
    refusal.value = 'The presenter has closed this page for now.';
  });

  expect(page.textContent).toBe('The presenter has closed this page for now.');
});

test('the puzzle has its title, its setter and a way to it', () => {
  take();

  expect(page.querySelector('h1')?.textContent).toBe('Sketch');
  expect(page.textContent).toContain('set by Ourselves');
  expect(page.querySelector('a')?.getAttribute('href')).toBe('https://example.org/sketch');
  expect(page.textContent).toContain('The board as of 15 seconds ago.');
});

test('a link that is no web address is not followed', () => {
  take({ credit: { title: '', setter: '', link: 'javascript:alert(1)' } });

  expect(page.querySelector('a')).toBeNull();
  expect(page.querySelector('h1')?.textContent).toBe('The puzzle on air');
});

test('each cell is read out with what is written in it', () => {
  take({ board: boardView({ placed: { r2c2: 6 }, lists: 'r1c2:48', struck: 'r1c2:8' }) });

  expect(page.querySelectorAll('[role="gridcell"]')).toHaveLength(81);
  expect(cell('r1c1').getAttribute('aria-label')).toBe('r1c1, 1, given');
  expect(cell('r2c2').getAttribute('aria-label')).toBe('r2c2, 6');
  expect(cell('r1c2').getAttribute('aria-label')).toBe('r1c2, open, cell mark 4 8, struck 8');
});

test('a hint of each grade is asked for, said and drawn', async () => {
  take();
  server.answers.push({
    kind: 'hint',
    words: ['Look at block 1'],
    grade: 1,
    picture: picture('Look at block 1', { kind: 'house', x: 0, y: 0, width: 3, height: 3 }),
  });
  await press('1 where');

  expect(answer()).toBe('Look at block 1');
  expect(page.querySelector('.board-face .house')).not.toBeNull();

  await press('3 which');
  expect(server.asked).toEqual(['Hint null 1', 'Hint null 3']);
  expect(page.querySelector('.board-face .house')).toBeNull();

  await press('Close');
  expect(answer()).toBe('');
});

test('grades that the presenter does not allow are off, and hints while it is quiet', () => {
  take({ asks: { open: true, highest: 2, quietOnAir: false } });
  expect(['1 where', '2 what', '3 which', '4 why'].map((words) => button(words).disabled)).toEqual([
    false,
    false,
    true,
    true,
  ]);
  expect(page.textContent).toContain('Hints go as far as 2 what for now.');

  take({ isQuiet: true });
  expect(button('1 where').disabled).toBe(true);
  expect(page.textContent).toContain('No hints while something is on air.');

  take({ asks: { open: false, highest: 4, quietOnAir: false } });
  expect(page.textContent).toContain('Hints are off for now.');
});

test('a chosen open cell is asked about, and called with its digit or without', async () => {
  take();
  act(() => {
    fireEvent.click(cell('r2c2'));
  });
  expect(cell('r2c2').getAttribute('aria-selected')).toBe('true');

  await press('2 what');
  await press('I have found r2c2: it is 7');
  await press('I do not say which');
  await press('Back to the whole board');
  await press('2 what');

  expect(server.asked).toEqual(['Hint "r2c2" 2', 'Call "r2c2" 7', 'Call "r2c2" null', 'Hint null 2']);
});

test('of a digit that was placed it is asked why, and of a given nothing', async () => {
  take({ board: boardView({ placed: { r2c2: 6 } }) });
  act(() => {
    fireEvent.click(cell('r1c1'));
  });
  expect(page.textContent).toContain('The 1 is a given.');

  act(() => {
    fireEvent.click(cell('r2c2'));
  });
  await press('Why is the 6 here?');
  await press('1 where');

  expect(server.asked).toEqual(['Why "r2c2"', 'Hint null 1']);
});

test('the board is walked over by arrows, and a cell chosen by Enter and let go by Escape', () => {
  take();
  const key = (name: string) =>
    act(() => {
      fireEvent.keyDown(document.activeElement as Element, { key: name });
    });
  cell('r1c1').focus();
  key('ArrowDown');
  key('ArrowRight');
  expect(document.activeElement?.getAttribute('aria-label')).toBe('r2c2, open');
  expect(model.chosen.value).toBeNull();

  key('Enter');
  expect(model.chosen.value).toBe(10);

  key('Escape');
  expect(model.chosen.value).toBeNull();
});

test('where nothing is answered the page says why that may be', async () => {
  take();
  server.answers.push({ kind: 'nothing' }, new Error('gone'));
  await press('1 where');
  expect(answer()).toBe('Not answered: wait a few seconds between two asks.');

  await press('1 where');
  expect(answer()).toBe('Not answered: the connection broke. Ask again when it is back.');
});

test('an answer stays while the presenter goes on, says so, and goes with the puzzle', async () => {
  take();
  await press('1 where');
  take({ sequence: 2, board: boardView({ placed: { r2c2: 6 } }) });
  expect(answer()).toBe('Answer 1The presenter has gone on since.');

  take({ sequence: 3, board: boardView({ givens: `2${'.'.repeat(80)}` }) });
  expect(answer()).toBe('');
});

test('a connection that is lost is said, and the board stays', () => {
  take();
  act(() => {
    state.value = 'reconnecting';
  });

  expect(page.textContent).toContain('The connection is lost: trying again.');
  expect(page.querySelectorAll('[role="gridcell"]')).toHaveLength(81);
});
