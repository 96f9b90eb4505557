import { contrast } from './contrast.ts';
import { type Palette, roleNames } from './palette.ts';
import { variable } from './variable.ts';

/** The roles of the drawing, each with the ink in which text is readable on it. */
export function rolesCss(palette: Palette): string {
  return block(
    ':root',
    roleNames(palette).flatMap((role): Entry[] => [
      [variable(role), palette[role]],
      [variable(`${role}Ink`), inkOn(palette[role], palette)],
    ]),
  );
}

/** The greys of our own boards: light or dark as the system says, unless the page was asked for one of them. */
export function boardCss({ board }: Palette): string {
  return themed({ light: greys(board.light, 'board-'), dark: greys(board.dark, 'board-') });
}

/** The greys of the panels around them, chosen in the same way. */
export function panelCss({ panel }: Palette): string {
  return themed({ light: greys(panel.light), dark: greys(panel.dark) });
}

/** The edge colour that stands out best on a plate of this colour. */
export function inkOn(
  plate: string,
  { darkEdge, lightEdge }: Pick<Palette, 'darkEdge' | 'lightEdge'>,
): string {
  return contrast(plate, darkEdge) > contrast(plate, lightEdge) ? darkEdge : lightEdge;
}

type Entry = [name: string, value: string];

function themed({ light, dark }: Record<'light' | 'dark', Entry[]>): string {
  const lit: Entry[] = [...light, ['color-scheme', 'light']];
  const dimmed: Entry[] = [...dark, ['color-scheme', 'dark']];
  return [
    block(':root', lit),
    block(':root[data-theme="dark"]', dimmed),
    `@media (prefers-color-scheme: dark) {\n${block(':root:not([data-theme])', dimmed)}}\n`,
  ].join('');
}

function greys(theme: Record<string, string>, prefix = ''): Entry[] {
  return Object.entries(theme).map(([name, colour]) => [variable(name, prefix), colour]);
}

function block(selector: string, entries: Entry[]): string {
  return `${selector} {\n${entries.map(([name, value]) => `  ${name}: ${value};\n`).join('')}}\n`;
}
