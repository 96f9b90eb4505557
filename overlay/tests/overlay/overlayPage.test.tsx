import { act, render } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import { OverlayModel } from '../../src/overlay/model.ts';
import { OverlayPage } from '../../src/overlay/OverlayPage.tsx';
import type { OverlayView } from '../../src/wire.ts';
import { frame, picture } from '../drawn.ts';

let model: OverlayModel;
let page: Element;

beforeEach(() => {
  model = new OverlayModel();
  page = render(<OverlayPage model={model} aspect={16 / 9} />).container;
});

const take = (said: Partial<OverlayView>) =>
  act(() =>
    model.take({ sequence: 1, frame, showsFrame: false, grade: null, picture: null, code: null, ...said }),
  );

test('before the first view there is nothing', () => {
  expect(page.innerHTML).toBe('');
});

test('while nothing is on air nothing is drawn and no word is said', () => {
  take({});

  expect(page.textContent).toBe('');
  expect(page.querySelectorAll('svg *').length).toBe(0);
});

test('what is on air is drawn inside the frame, at any size of the page', () => {
  take({ picture: picture('Look at row 1', { kind: 'house', x: 0, y: 0, width: 9, height: 1 }) });
  const board = page.querySelector<SVGElement>('svg.board-place');

  expect(board?.style.cssText).toBe('left: 25%; top: 10%; width: 45%; height: 80%;');
  expect(board?.getAttribute('viewBox')).toBe('0 0 9 9');
  expect(board?.getAttribute('preserveAspectRatio')).toBe('none');
  expect(board?.querySelectorAll('.house').length).toBe(1);
  expect(page.textContent).toBe('Look at row 1');
});

test('a picture without words has no plate for them', () => {
  take({ picture: picture('', { kind: 'mark', x: 1, y: 1, digit: 1 }) });

  expect(page.querySelector('.caption')).toBeNull();
});

test('a cleared picture goes with its words', () => {
  take({ picture: picture('Look at row 1', { kind: 'house', x: 0, y: 0, width: 9, height: 1 }) });
  take({ sequence: 2 });

  expect(page.textContent).toBe('');
  expect(page.querySelector('.house')).toBeNull();
});

test('the outline of the frame shows while it is being placed, and goes when the line is lost', () => {
  take({ showsFrame: true });
  expect(page.querySelectorAll('.frame-outline').length).toBe(1);

  act(() => model.lose());
  expect(page.querySelectorAll('.frame-outline').length).toBe(0);
});

test('the code that measures the delay stands by itself, and goes with the line', () => {
  take({ code: 'kdfr' });
  expect(page.textContent).toBe('delay kdfr');

  act(() => model.lose());
  expect(page.textContent).toBe('');
});
