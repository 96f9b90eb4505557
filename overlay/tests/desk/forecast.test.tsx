import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { comingWords } from '../../src/desk/forecast/words.ts';
import type { Coming, ForecastLine, ForecastView } from '../../src/wireForecast.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

const line = (rule: string, coming: Coming, said: Partial<ForecastLine> = {}): ForecastLine => ({
  rule,
  name: rule,
  coming,
  isPassed: false,
  steps: null,
  atLeast: null,
  watch: [],
  nearMisses: [],
  ...said,
});

const lines = [
  line('xy-wing', 'ahead', { steps: 3, atLeast: 2, watch: ['r1c2', 'r2c3', 'r9c9'] }),
  line('x-wing', 'never', { nearMisses: [{ cell: 'r4c7', digit: 5, pattern: ['r4c7', 'r4c1', 'r4c7'] }] }),
  line('swordfish', 'shown'),
];

beforeEach(() => {
  shown = new ShownDesk();
  shown.take({ featured: lines.map(({ rule }) => ({ rule, isEarly: false })) });
});

afterEach(cleanup);

const take = (said: Partial<ForecastView> = {}) =>
  act(() => shown.model.forecast.take({ sequence: 1, blocked: null, rules: lines, ...said }));
const pointed = () =>
  shown.all('.pointed').map((cell) => (cell.getAttribute('aria-label') ?? '').split(',')[0]);
const words = () => shown.all('.forecast .words').map((each) => each.textContent);

test('each featured rule has a line that says when it comes and what could lose what', () => {
  take();

  expect(words()).toEqual([
    'xy-wing 2 to 3 easier steps away',
    'x-wing not found ahead · r4c7 could lose 5',
    'swordfish shown',
  ]);
});

test('where no rule is featured any more there is nothing', () => {
  take();
  shown.take({ featured: [] });

  expect(shown.all('.forecast')).toEqual([]);
});

test('E shows the cells to watch on the board, one rule after the other, and then none', () => {
  take();
  expect(pointed()).toEqual([]);

  shown.key('e');
  expect(pointed()).toEqual(['r1c2', 'r2c3', 'r9c9']);
  expect(shown.button('xy-wing').getAttribute('aria-pressed')).toBe('true');
  shown.key('e');
  expect(pointed()).toEqual(['r4c1', 'r4c7']);
  shown.key('e');
  expect(pointed()).toEqual([]);
});

test('the cells show while a line has the focus, and stay when it is pressed', () => {
  take();
  fireEvent.focus(shown.button('xy-wing'));
  expect(pointed()).toHaveLength(3);
  fireEvent.blur(shown.button('xy-wing'));
  expect(pointed()).toEqual([]);

  fireEvent.click(shown.button('xy-wing'));
  fireEvent.blur(shown.button('xy-wing'));
  expect(pointed()).toHaveLength(3);
  fireEvent.click(shown.button('xy-wing'));
  expect(pointed()).toEqual([]);
});

test('cells that were being watched go with their rule', () => {
  take();
  shown.key('e');
  take({ rules: lines.map((each) => ({ ...each, coming: 'shown', watch: [], nearMisses: [] })) });
  expect(pointed()).toEqual([]);

  take();
  shown.take({ featured: [{ rule: 'x-wing', isEarly: false }] });
  expect(words()).toHaveLength(1);
  expect(pointed()).toEqual([]);
});

test('a forecast of an older board says that it is being looked at again, and one that cannot be made says why', () => {
  take();
  expect(shown.all('.forecast .behind.not')).toHaveLength(1);
  shown.take({ featured: [{ rule: 'x-wing', isEarly: false }], scanOf: 2 });
  expect(shown.all('.forecast .behind.not')).toEqual([]);

  take({ sequence: 2, blocked: 'There is no way on.', rules: [] });
  expect(shown.at('.forecast').textContent).toContain('There is no way on.');
});

test.each([
  [line('a', 'open', { steps: 0 }), 'open now'],
  [line('a', 'near', { steps: 1, atLeast: 1 }), '1 easier step away'],
  [line('a', 'near', { steps: 2, atLeast: 2 }), '2 easier steps away'],
  [line('a', 'ahead', { steps: 7, atLeast: 4 }), '4 to 7 easier steps away'],
  [line('a', 'ahead', { steps: 7, atLeast: 1 }), 'at most 7 easier steps away'],
  [line('a', 'late'), 'later, behind harder steps'],
  [line('a', 'never', { isPassed: true }), 'passed: not found ahead'],
  [line('a', 'off'), 'cut from the ladder'],
])('what %o says is %s', (said, expected) => {
  expect(comingWords(said)).toBe(expected);
});
