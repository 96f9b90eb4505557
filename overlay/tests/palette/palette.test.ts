import { describe, expect, test } from 'vitest';
import palette from '../../../configs/palette.json';
import { contrast } from '../../src/palette/contrast.ts';
import { boardCss, inkOn, panelCss, rolesCss } from '../../src/palette/css.ts';
import { roleNames } from '../../src/palette/palette.ts';
import { ink, paint } from '../../src/palette/variable.ts';

const { darkEdge, lightEdge } = palette;
const themes = Object.entries(palette.panel);
const boards = Object.entries(palette.board);

// Source: WCAG 2.2, "contrast ratio"; the figures are computed by hand from its formula.
test.each([
  ['#767676', 4.5422],
  ['#777777', 4.4781],
  ['#949494', 3.0335],
  ['#959595', 2.9953],
  ['#000000', 21],
])('the contrast of %s on white is %f', (colour, ratio) => {
  expect(contrast(colour, '#FFFFFF')).toBeCloseTo(ratio, 4);
  expect(contrast('#FFFFFF', colour)).toBeCloseTo(ratio, 4);
});

test('the drawing uses no colour beside the eight of Okabe and Ito and white', () => {
  // Source: Okabe and Ito (2008), "Color Universal Design".
  const eight = '#000000 #E69F00 #56B4E9 #009E73 #F0E442 #0072B2 #D55E00 #CC79A7'.split(' ');

  for (const role of roleNames(palette)) expect([...eight, '#FFFFFF']).toContain(palette[role]);
});

test('over any grey at least one of the two edges of a shape stands out by 3 to 1', () => {
  for (let level = 0; level < 256; level++) {
    const ground = `#${level.toString(16).padStart(2, '0').repeat(3)}`;
    expect(Math.max(contrast(ground, darkEdge), contrast(ground, lightEdge))).toBeGreaterThan(3);
  }
});

test.each(roleNames(palette))('%s stands out by 3 to 1 against one of its own edges', (role) => {
  const best = Math.max(contrast(palette[role], darkEdge), contrast(palette[role], lightEdge));

  expect(best).toBeGreaterThan(3);
});

test.each(roleNames(palette))('text on a plate of %s is read at 4.5 to 1', (role) => {
  expect(contrast(palette[role], inkOn(palette[role], palette))).toBeGreaterThan(4.5);
});

describe.each(themes)('in the %s theme of the panels', (_, theme) => {
  const grounds = [theme.page, theme.area, theme.list, theme.control, theme.chosen];

  test.each(grounds)('words are read at 4.5 to 1 on %s', (ground) => {
    expect(contrast(theme.text, ground)).toBeGreaterThan(4.5);
    expect(contrast(theme.muted, ground)).toBeGreaterThan(4.5);
  });

  test('the edges of controls stand out by 3 to 1', () => {
    for (const ground of [theme.page, theme.area, theme.list, theme.control]) {
      expect(contrast(theme.controlEdge, ground)).toBeGreaterThan(3);
    }
  });

  test('the words of the main button are read in both its states', () => {
    expect(contrast(theme.area, theme.text)).toBeGreaterThan(4.5);
    expect(contrast(theme.area, theme.textHeld)).toBeGreaterThan(4.5);
  });
});

describe.each(boards)('on the %s board', (_, board) => {
  test('digits, marks and words are read at 4.5 to 1', () => {
    for (const ink of [board.given, board.placed, board.mark]) {
      expect(contrast(ink, board.cell)).toBeGreaterThan(4.5);
      expect(contrast(ink, board.givenCell)).toBeGreaterThan(4.5);
    }
    expect(contrast(board.words, board.surround)).toBeGreaterThan(4.5);
    expect(contrast(board.quietWords, board.surround)).toBeGreaterThan(4.5);
  });

  test('lines stand out by 3 to 1', () => {
    expect(contrast(board.thinLine, board.cell)).toBeGreaterThan(3);
    expect(contrast(board.thickLine, board.cell)).toBeGreaterThan(3);
  });
});

test('each role becomes a variable, and so does the ink on it', () => {
  const css = rolesCss(palette);

  expect(css).toContain(`--first-role: ${palette.firstRole};`);
  expect(css).toContain(`--first-role-ink: ${lightEdge};`);
  expect(css).toContain(`--second-role-ink: ${darkEdge};`);
  expect(paint('firstRole')).toBe('var(--first-role)');
  expect(ink('secondRole')).toBe('var(--second-role-ink)');
});

test('the sheet of the roles gives the overlay neither a ground nor a colour scheme', () => {
  expect(rolesCss(palette)).not.toMatch(/background|color-scheme|--page|--board/);
});

test('a page follows the system unless it was asked for a theme', () => {
  const css = panelCss(palette);
  const followed =
    /@media \(prefers-color-scheme: dark\) \{\n:root:not\(\[data-theme\]\) \{[^}]*--page: (\S+);/;

  expect(css).toMatch(new RegExp(`^:root \\{\\n {2}--page: ${palette.panel.light.page};`));
  expect(css).toMatch(
    new RegExp(`:root\\[data-theme="dark"\\] \\{\\n {2}--page: ${palette.panel.dark.page};`),
  );
  expect(followed.exec(css)?.[1]).toBe(palette.panel.dark.page);
});

test('the greys of a board have names of their own', () => {
  expect(boardCss(palette)).toContain(`--board-given-cell: ${palette.board.light.givenCell};`);
});
