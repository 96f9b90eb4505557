import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = join(dirname(fileURLToPath(import.meta.url)), '../src');
const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(tsx?|css)$/.test(file))
  .map((file) => ({ name: file.replaceAll('\\', '/'), text: readFileSync(join(root, file), 'utf8') }));
const code = files.filter(({ name }) => !name.endsWith('.css'));

/** What a file imports from beside or above itself, as names of files. */
function importsOf(name: string, text: string): string[] {
  return [...text.matchAll(/from '(\.{1,2}\/[^']+)'/g)].map(([, path = '']) =>
    relative(root, join(root, dirname(name), path)).replaceAll('\\', '/'),
  );
}

test('there are sources to look at', () => {
  expect(code.length).toBeGreaterThan(50);
});

test('a colour is written in configs/palette.json and nowhere else', () => {
  const literal =
    /#[0-9a-f]{3,8}\b(?!['"]\))|\brgba?\(|\bhsla?\(|\boklch\(|: (white|black|red|green|blue|gr[ae]y)\b/i;
  const offending = files.filter(({ text }) =>
    text.split('\n').some((line) => !/^\s*(#|\*|\/\/)/.test(line) && literal.test(line)),
  );

  expect(offending.map(({ name }) => name)).toEqual([]);
});

test('no file imports itself by a roundabout way', () => {
  const imports = new Map(code.map(({ name, text }) => [name, importsOf(name, text)]));
  const done = new Set<string>();

  const walk = (name: string, way: readonly string[]): void => {
    if (way.includes(name)) throw new Error(`A cycle: ${[...way, name].join(' -> ')}`);
    if (done.has(name)) return;
    for (const next of imports.get(name) ?? []) walk(next, [...way, name]);
    done.add(name);
  };

  for (const { name } of code) walk(name, []);
  expect(done.size).toBeGreaterThanOrEqual(code.length);
});

test('what is on air knows nothing of the desk', () => {
  const onAir = code.filter(({ name }) => /^(overlay|stage|picture|board|grid)\//.test(name));

  expect(
    onAir.flatMap(({ name, text }) => importsOf(name, text)).filter((path) => path.startsWith('desk/')),
  ).toEqual([]);
});

test('nothing is inline that the policy of the pages forbids', () => {
  const pages = ['presenter.html', 'overlay.html', 'stage.html', 'audience.html'].map((page) =>
    readFileSync(join(root, '..', page), 'utf8'),
  );

  for (const page of pages)
    expect(page).not.toMatch(/<style|style=|<script(?![^>]*src=)|\son[a-z]+=|https?:\/\//);
  expect(
    code.filter(({ text }) => /dangerouslySetInnerHTML|innerHTML|eval\(/.test(text)).map(({ name }) => name),
  ).toEqual([]);
});
