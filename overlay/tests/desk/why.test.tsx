import { act, cleanup, fireEvent, render } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { DeskPage } from '../../src/desk/DeskPage.tsx';
import type { EntryProof, WhyView } from '../../src/wireProofs.ts';
import { deskView } from '../drawn.ts';
import { settle } from '../settle.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;
let page: Element;

beforeEach(() => {
  desk = new LoneDesk();
  page = render(<DeskPage model={desk.model} />).container;
});

afterEach(cleanup);

const step = { name: 'hidden single', short: '6 in block 1', sentence: 'In block one, six only fits there.' };
const proof: EntryProof = {
  entry: '6 in r2c2',
  kind: 'proved',
  text: 'follows by a hidden single',
  steps: [step],
};
const answer: WhyView = { cell: 'r1c2', digit: 4, text: 'It cannot be four.', steps: [step] };

const take = (said = {}) => act(() => desk.model.takeDesk(deskView(said)));
const press = (key: string, target: Element = document.body) =>
  act(async () => {
    fireEvent.keyDown(target, { key });
    await settle();
  });
const dialog = () => page.querySelector('.why-dialog');
const texts = (selector: string) => [...page.querySelectorAll(selector)].map((each) => each.textContent);

test('how the last entry follows stands above the warnings, and opens to its steps', () => {
  take({ proof });

  const line = page.querySelector<HTMLDetailsElement>('.watch-area details.proof');
  expect(line?.querySelector('summary')?.textContent).toBe('6 in r2c2 follows by a hidden single');
  expect(line?.open).toBe(false);
  expect(texts('.proof .steps li')).toEqual(['6 in block 1In block one, six only fits there.']);
});

test.each(['pending', 'notProved', 'wrong', 'unsound'] as const)(
  'an entry without a proof has one line: %s',
  (kind) => {
    take({ proof: { ...proof, kind, text: 'is not proved', steps: [] } });

    expect(page.querySelector(`p.proof.${kind}`)?.textContent).toBe('6 in r2c2 is not proved');
    expect(page.querySelector('details.proof')).toBeNull();
  },
);

test('without an entry there is no line', () => {
  take();

  expect(page.querySelector('.proof')).toBeNull();
});

test('Y asks about the cell at the cursor: of an open cell the digit is chosen by its key', async () => {
  take();
  act(() => desk.model.board.move(0, 1, false));
  await press('y');
  expect(dialog()?.querySelector('h2')?.textContent).toBe('Why? r1c2');
  expect(desk.made).toEqual([]);
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Why 1 in r1c2');

  await press('4', document.activeElement ?? undefined);
  expect(desk.made).toEqual(['Why "r1c2" 4']);
  expect(texts('.why p')).toEqual(['Looking for a proof.']);

  act(() => desk.model.why.take(answer));
  expect(texts('.why p')).toEqual(['It cannot be four.']);
  expect(texts('.why .steps b')).toEqual(['6 in block 1']);
  expect(page.querySelector('.why [aria-pressed="true"]')?.textContent).toBe('4');
});

test('the digit that stands in the cell is asked about at once', async () => {
  take();
  await press('y');

  expect(desk.made).toEqual(['Why "r1c1" 1']);
});

test('an answer to a question asked before is left, and so is one after the dialog was opened anew', async () => {
  take();
  act(() => desk.model.board.move(0, 1, false));
  await press('y');
  await press('5', document.activeElement ?? undefined);
  act(() => desk.model.why.take(answer));
  expect(texts('.why p')).toEqual(['Looking for a proof.']);

  act(() => desk.model.close());
  act(() => desk.model.askWhy());
  act(() => desk.model.why.take({ ...answer, digit: 5 }));
  expect(texts('.why p')).toEqual(['Choose the digit; the answer may tell the solution.']);
});

test('where the question is refused the reason stands instead of the answer', async () => {
  desk.calls.refusals.set('Why', 'Ask again in a moment.');
  take();
  await press('y');

  expect(texts('.why p')).toEqual(['Ask again in a moment.']);
});

test('a co-host cannot ask: the answer may tell the solution', async () => {
  take({ role: 'coHost' });
  await press('y');

  expect(dialog()).toBeNull();
  expect([...page.querySelectorAll('button')].some((each) => each.textContent?.startsWith('Why'))).toBe(
    false,
  );
});
