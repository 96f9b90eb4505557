import { render } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { BoardFace } from '../../src/board/BoardFace.tsx';
import { CellFace } from '../../src/board/CellFace.tsx';
import { smallDigitsOf } from '../../src/board/marks.ts';
import { candidatePlace } from '../../src/grid/candidatePlace.ts';
import { cellNamed, nameOf } from '../../src/grid/cells.ts';
import { reach } from '../../src/picture/Plate.tsx';
import type { StageCell } from '../../src/wire.ts';
import { cellsOf, sketch, stageCell } from '../drawn.ts';

/** A cell in letters: `4` written in the list, `4b` a block mark, `4?` only standing, each with `/` if struck. */
function written(cell: StageCell, candidates?: number[]): string {
  const signs = { block: 'b', list: '', standing: '?' };
  return smallDigitsOf(cell, candidates)
    .map(({ digit, kind, isStruck }) => `${digit}${signs[kind]}${isStruck ? '/' : ''}`)
    .join(' ');
}

function face(cell: StageCell): Element {
  const { container } = render(
    <svg aria-hidden="true">
      <CellFace cell={cell} x={3} y={5} />
    </svg>,
  );
  return container;
}

const texts = (root: Element, selector: string) =>
  [...root.querySelectorAll(selector)].map((text) => text.textContent).join(' ');

test('a name of a cell and its place among the 81 are the same thing', () => {
  for (let cell = 0; cell < 81; cell++) expect(cellNamed(nameOf(cell))).toBe(cell);
  expect(nameOf(33)).toBe('r4c7');
  expect(cellNamed('r0c7')).toBeNull();
});

test.each([
  ['nothing is written', {}, [], ''],
  ['an empty list says nothing', { cellMark: [] }, [], ''],
  ['a list is written in order', { cellMark: [2, 7] }, [], '2 7'],
  ['a struck candidate of the list', { cellMark: [2, 7], struck: [7] }, [], '2 7/'],
  ['a struck candidate that was never written', { cellMark: [2], struck: [4] }, [], '2 4/'],
  ['a struck block mark', { blockMarks: [4, 6], struck: [4] }, [], '4b/ 6b'],
  ['a block mark that is in the list too', { blockMarks: [4], cellMark: [4, 5] }, [], '4b 5'],
  ['candidates beside what is written', { blockMarks: [1], cellMark: [2] }, [1, 2, 5], '1b 2 5?'],
])('%s', (_, said, candidates, expected) => {
  expect(written(stageCell(said), candidates)).toBe(expected);
});

test('a given is told apart from a placed digit, and a digit hides the marks', () => {
  expect(texts(face(stageCell({ digit: 8, isGiven: true, cellMark: [1] })), '.given')).toBe('8');
  expect(texts(face(stageCell({ digit: 8, cellMark: [1], struck: [2] })), '.placed')).toBe('8');
  expect(face(stageCell({ digit: 8, cellMark: [1] })).textContent).toBe('8');
});

test('a block mark has a bar over it, a struck candidate a stroke through it, others neither', () => {
  const root = face(stageCell({ blockMarks: [1], cellMark: [2, 3], struck: [3] }));
  const signs = [...root.querySelectorAll('.mark')].map(
    (mark) => mark.textContent + [...mark.querySelectorAll('path')].map((path) => path.getAttribute('class')),
  );

  expect(signs).toEqual(['1bar', '2', '3strike']);
});

test('plates over neighbouring candidates touch neither each other nor the edge of the cell', () => {
  const places = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((digit) => candidatePlace(3, 5, digit));

  expect(places[4]).toEqual({ x: 3.5, y: 5.5 });
  for (const [index, one] of places.entries()) {
    expect(Math.min(one.x - 3, 4 - one.x, one.y - 5, 6 - one.y)).toBeGreaterThan(reach);
    for (const other of places.slice(index + 1)) {
      expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(2 * reach);
    }
  }
});

test('a board draws every digit in its cell and shades the givens', () => {
  const { container } = render(<BoardFace cells={cellsOf(sketch)} />);
  const digits = [...container.querySelectorAll('text.given')].map(
    (text) => `${text.textContent} at ${text.getAttribute('x')}`,
  );

  expect(digits).toEqual(['1 at 0.5', '2 at 4.5', '9 at 8.5']);
  expect(container.querySelectorAll('.given-ground').length).toBe(3);
});

test('marks do not look out from under the lozenge over their cell', () => {
  const cells = cellsOf(sketch);
  const marked = cells.map((cell, index) => (index === 1 || index === 2 ? { ...cell, cellMark: [7] } : cell));
  const { container } = render(
    <BoardFace cells={marked} shapes={[{ kind: 'lozenge', x: 1.5, y: 0.5, digit: 7 }]} />,
  );

  expect([...container.querySelectorAll('.mark text')].map((text) => text.getAttribute('x'))).toEqual([
    String(candidatePlace(2, 0, 7).x),
  ]);
});
