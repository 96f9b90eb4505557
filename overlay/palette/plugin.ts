import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { boardCss, panelCss, rolesCss } from '../src/palette/css.ts';
import type { Palette } from '../src/palette/palette.ts';

const sheets: Record<string, (palette: Palette) => string> = {
  'virtual:palette/roles.css': rolesCss,
  'virtual:palette/board.css': boardCss,
  'virtual:palette/panel.css': panelCss,
};

/**
 * Turns the one palette file into style sheets: the roles of the drawing, the greys of our own boards, and those of the panels.
 * They are apart because the overlay takes only the roles: nothing may give its page a ground.
 */
export function palette(file: string): Plugin {
  return {
    name: 'companion-palette',
    resolveId: (id) => (id in sheets ? `\0${id}` : null),
    load(id) {
      const sheet = id.startsWith('\0') ? sheets[id.slice(1)] : undefined;
      if (!sheet) return null;
      this.addWatchFile(file);
      return sheet(JSON.parse(readFileSync(file, 'utf8')) as Palette);
    },
  };
}
