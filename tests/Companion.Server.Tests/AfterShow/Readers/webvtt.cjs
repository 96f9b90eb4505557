// Reads a WebVTT file with the W3C's parser and validator: webvtt.cjs KIND FILE, where KIND is chapters or captions, run where that
// parser is installed. Prints its cues, each with its text as a reader sees it, and all that is wrong with the file.
const { readFileSync } = require('node:fs');
const { createRequire } = require('node:module');

const installed = createRequire(`${process.cwd()}/`);
const { WebVTTParser } = installed('webvtt-parser');
const [kind, file] = process.argv.slice(2);
const { cues, errors } = new WebVTTParser(installed('webvtt-parser/html-entities.json')).parse(readFileSync(file, 'utf8'), kind);
const textOf = (node) => (node.type === 'text' ? node.value : (node.children ?? []).map(textOf).join(''));

console.log(
  JSON.stringify({
    cues: cues.map(({ startTime, endTime, tree }) => ({ startTime, endTime, text: textOf(tree) })),
    errors: errors.map(({ line, message }) => `Line ${line}: ${message}`),
  }),
);
