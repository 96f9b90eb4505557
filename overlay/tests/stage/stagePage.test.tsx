import { act, render } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import { StageModel } from '../../src/stage/model.ts';
import { StagePage } from '../../src/stage/StagePage.tsx';
import type { StageView } from '../../src/wire.ts';
import { cellsOf, picture, sketch } from '../drawn.ts';

let model: StageModel;

beforeEach(() => {
  model = new StageModel();
});

function shown(said: Partial<StageView> = {}): Element {
  const credit = { title: 'Sketch', setter: 'Ourselves', link: 'https://example.org/sketch/' };
  const view = {
    sequence: 1,
    credit,
    cells: cellsOf(sketch),
    grade: null,
    picture: null,
    code: null,
    ...said,
  };
  const { container } = render(<StagePage model={model} refusal="" />);
  act(() => model.take(view));
  return container;
}

test('the board stands with its title and whom it is owed to', () => {
  const page = shown();

  expect(page.querySelector('h1')?.textContent).toBe('Sketch');
  expect(page.querySelector('.setter')?.textContent).toBe('set by Ourselves');
  expect(page.querySelector('.link')?.textContent).toBe('example.org/sketch');
  expect(page.querySelectorAll('.given').length).toBe(3);
});

test('what is unknown of a puzzle is left out', () => {
  const page = shown({ credit: { title: '', setter: '', link: '' } });

  expect(page.querySelector('.credit')?.children.length).toBe(0);
});

test('what is on air lies over the board, with its words beside', () => {
  const page = shown({ grade: 2, picture: picture('Look for a naked single') });
  expect(page.querySelector('.stage-caption')?.textContent).toBe('Look for a naked single');

  act(() => model.take({ ...(model.view.value as StageView), picture: null }));
  expect(page.querySelector('.stage-caption')?.textContent).toBe('');
});

test('a refusal is said plainly as long as there is no board', () => {
  const { container, rerender } = render(<StagePage model={model} refusal="" />);
  expect(container.textContent).toBe('');

  rerender(<StagePage model={model} refusal="This link is not valid any more." />);
  expect(container.textContent).toBe('This link is not valid any more.');
});

test('the code that measures the delay stands beside the board', () => {
  expect(shown({ code: 'kdfr' }).querySelector('.stage-caption')?.textContent).toBe('delay kdfr');
});
