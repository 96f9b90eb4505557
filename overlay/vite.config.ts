import { fileURLToPath } from 'node:url';
import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';
import { palette } from './palette/plugin.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  base: '/',
  plugins: [preact({ devToolsEnabled: false }), palette(here('../configs/palette.json'))],
  build: {
    outDir: process.env.VITE_OUT ?? here('../src/Companion.Server/wwwroot'),
    emptyOutDir: true,
    // Page sources of broadcast software run a browser many versions behind.
    target: ['chrome95', 'firefox102', 'safari15.4'],
    // The pages' policy takes nothing inline: neither data addresses nor scripts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      input: ['presenter', 'overlay', 'stage', 'audience'].map((page) => here(`${page}.html`)),
    },
  },
  test: {
    // A page for each test is dear, and only components need one.
    projects: [
      { extends: true, test: { name: 'logic', environment: 'node', include: ['tests/**/*.test.ts'] } },
      { extends: true, test: { name: 'pages', environment: 'happy-dom', include: ['tests/**/*.test.tsx'] } },
    ],
  },
});
