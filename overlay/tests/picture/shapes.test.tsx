import { render } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { layersOf } from '../../src/picture/edges.ts';
import { Shapes } from '../../src/picture/Shapes.tsx';
import type { Shape } from '../../src/wirePicture.ts';

function drawn(...shapes: Shape[]): Element {
  const { container } = render(
    <svg aria-hidden="true">
      <Shapes shapes={shapes} />
    </svg>,
  );
  return container;
}

const strokes = (root: Element, selector = 'path') =>
  [...root.querySelectorAll(selector)].map((path) => path.getAttribute('stroke'));
const fills = (root: Element, selector: string) =>
  [...root.querySelectorAll(selector)].map((path) => path.getAttribute('fill'));

test('a line has a dark edge, a light one on it, and its colour on both', () => {
  const layers = layersOf('link', 0.06);

  expect(layers.map(({ role }) => role)).toEqual(['darkEdge', 'lightEdge', 'link']);
  const [dark = 0, light = 0, colour = 0] = layers.map(({ width }) => width);
  expect(dark).toBeGreaterThan(light);
  expect(light).toBeGreaterThan(colour);
});

test('a house is a dashed outline in its role with hatching inside', () => {
  const root = drawn({ kind: 'house', x: 3, y: 0, width: 3, height: 3 });
  const pattern = root.querySelector('pattern');
  const filled = fills(root, '.house > path')[0];

  expect(filled).toBe(`url(#${pattern?.id})`);
  expect(strokes(root, '.house > g path')).toEqual([
    'var(--dark-edge)',
    'var(--light-edge)',
    'var(--look-at)',
  ]);
});

test('two houses do not share a hatching, as either may go', () => {
  const root = drawn(
    { kind: 'house', x: 0, y: 0, width: 9, height: 1 },
    { kind: 'house', x: 0, y: 0, width: 1, height: 9 },
  );
  const ids = [...root.querySelectorAll('pattern')].map(({ id }) => id);

  expect(new Set(ids).size).toBe(2);
});

test('a cell of the first role has one frame and a tab with its letter', () => {
  const root = drawn({ kind: 'cell', x: 4, y: 4, isSecond: false, tab: 'P' });

  expect(strokes(root, '.cell > g:first-child path').at(-1)).toBe('var(--first-role)');
  expect(root.querySelectorAll('.cell > path').length).toBe(0);
  expect(root.querySelectorAll('.tab circle').length).toBe(0);
  expect(root.querySelector('.tab text')?.textContent).toBe('P');
  expect(fills(root, '.tab path').at(-1)).toBe('var(--first-role)');
  expect(fills(root, '.tab text')).toEqual(['var(--first-role-ink)']);
});

test('a cell of the second role has a frame parted in two and a round tab', () => {
  const root = drawn({ kind: 'cell', x: 4, y: 4, isSecond: true, tab: 'A' });

  expect(strokes(root, '.cell > g:first-child path').at(-1)).toBe('var(--second-role)');
  expect(strokes(root, '.cell > path')).toEqual(['var(--dark-edge)']);
  expect(fills(root, '.tab circle').at(-1)).toBe('var(--second-role)');
});

test('a cell without a letter has no tab', () => {
  expect(drawn({ kind: 'cell', x: 0, y: 0, isSecond: false, tab: '' }).querySelector('.tab')).toBeNull();
});

test('a link follows its curve, solid if strong and broken if weak', () => {
  const link = { kind: 'link', x1: 0.5, y1: 0.5, x2: 8.5, y2: 0.5, bendX: 4.5, bendY: 1 } as const;
  const strong = drawn({ ...link, isStrong: true });
  const weak = drawn({ ...link, isStrong: false });

  expect(strong.querySelector('path')?.getAttribute('d')).toBe('M0.5 0.5Q4.5 1 8.5 0.5');
  expect(strong.querySelector('[stroke-dasharray]')).toBeNull();
  expect(weak.querySelector('[stroke-dasharray]')).not.toBeNull();
  expect(strokes(weak).at(-1)).toBe('var(--link)');
});

test('a group is a rounded outline round its candidates', () => {
  const root = drawn({ kind: 'group', x1: 6.25, y1: 0.25, x2: 7.25, y2: 0.25 });
  const round = 'a0.18 0.18 0 0 1';

  expect(root.querySelector('path')?.getAttribute('d')).toBe(
    `M6.25 0.07h1${round} 0.18 0.18v0${round} -0.18 0.18h-1${round} -0.18 -0.18v0${round} 0.18 -0.18Z`,
  );
  expect(strokes(root)).toEqual(['var(--dark-edge)', 'var(--light-edge)', 'var(--link)']);
});

test('a mark is a digit on a plate of its own', () => {
  const root = drawn({ kind: 'mark', x: 0.5, y: 0.5, digit: 7 });

  expect(fills(root, 'circle')).toEqual(['var(--dark-edge)', 'var(--light-edge)']);
  expect(root.querySelector('text')?.textContent).toBe('7');
  expect(fills(root, 'text')).toEqual(['var(--light-edge-ink)']);
});

test('a candidate that goes has a slash behind its digit and beyond its plate', () => {
  const root = drawn({ kind: 'slash', x: 0.5, y: 0.5, digit: 7 });
  const order = [...root.querySelectorAll('path, text')].map(
    (part) => part.getAttribute('stroke') ?? part.getAttribute('fill'),
  );
  const corner = (selector: string) =>
    Number(/^M([\d.]+)/.exec(root.querySelector(selector)?.getAttribute('d') ?? '')?.[1]);

  expect(order).toEqual([
    'var(--dark-edge)',
    'var(--light-edge)',
    'var(--dark-edge)',
    'var(--light-edge)',
    'var(--goes)',
    'var(--light-edge)',
  ]);
  expect(root.querySelector('text')?.textContent).toBe('7');
  expect(corner('.slash > g[stroke-linecap] path')).toBeLessThan(corner('.plate path'));
});

test('plates tell a candidate of the pattern from one that goes by their form', () => {
  const root = drawn({ kind: 'mark', x: 0.5, y: 0.5, digit: 1 }, { kind: 'slash', x: 1.5, y: 0.5, digit: 1 });

  expect(root.querySelectorAll('.mark circle').length).toBe(2);
  expect(root.querySelectorAll('.slash circle').length).toBe(0);
});

test('a digit that follows is a filled lozenge with the digit on it', () => {
  const root = drawn({ kind: 'lozenge', x: 4.5, y: 4.5, digit: 3 });

  expect(fills(root, 'path')).toEqual(['var(--dark-edge)', 'var(--light-edge)', 'var(--follows)']);
  expect(fills(root, 'text')).toEqual(['var(--follows-ink)']);
  expect(root.querySelector('text')?.textContent).toBe('3');
});

test('shapes are drawn in their order, the lowest first', () => {
  const root = drawn(
    { kind: 'lozenge', x: 1, y: 1, digit: 1 },
    { kind: 'house', x: 0, y: 0, width: 9, height: 1 },
    { kind: 'mark', x: 1, y: 1, digit: 2 },
  );

  expect([...root.querySelectorAll('.shapes > g')].map((shape) => shape.getAttribute('class'))).toEqual([
    'lozenge',
    'house',
    'mark',
  ]);
});

test('a shape that this page does not know yet is left out', () => {
  const unknown = { kind: 'spiral' } as unknown as Shape;

  expect(drawn(unknown, { kind: 'mark', x: 1, y: 1, digit: 2 }).querySelectorAll('.shapes > g').length).toBe(
    1,
  );
});

test('a cell that viewers call has a bracket in each corner and about their number on a plate', () => {
  const root = drawn({ kind: 'called', x: 2, y: 3, count: '25+' });

  expect(strokes(root, '.called > g path')).toEqual([
    'var(--dark-edge)',
    'var(--light-edge)',
    'var(--called)',
  ]);
  expect(root.querySelector('.called > g path')?.getAttribute('d')?.match(/M/g)).toHaveLength(4);
  expect(root.querySelector('.called text')?.textContent).toBe('25+');
  expect(fills(root, '.called > path').at(-1)).toBe('var(--called)');
});
