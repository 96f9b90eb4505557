import { act } from '@testing-library/preact';
import { beforeEach, expect, test, vi } from 'vitest';
import type { ChaptersView, RecordingPhase, ShowLine } from '../../src/wireShows.ts';
import { settle } from '../settle.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

const show = (id: number, said: Partial<ShowLine> = {}): ShowLine => ({
  id,
  title: `Evening ${id}`,
  puzzles: ['Lanterns'],
  began: '2026-01-01T20:00:00Z',
  seconds: 3725,
  events: 200,
  entries: 120,
  hash: 'abcdef0123456789',
  isLive: false,
  isImported: false,
  ...said,
});

const chapters = (said: Partial<ChaptersView> = {}): ChaptersView => ({
  show: 1,
  title: 'Evening 1',
  chapters: [
    { at: 0, title: 'Introduction' },
    { at: 30, title: 'Singles: the 5s' },
    { at: 95, title: 'XY-wing, pivot r5c5' },
  ],
  length: 180,
  offset: 0,
  isRecorded: true,
  isEdited: false,
  broken: [],
  ...said,
});

const recording = (phase: RecordingPhase, seconds = 0, since: string | null = null) => ({
  recording: { phase, seconds, since },
});

beforeEach(() => {
  HTMLDialogElement.prototype.showModal ??= () => {};
  shown = new ShownDesk();
  shown.take();
});

const openList = () => {
  shown.key('s');
  act(() => shown.model.shows.take({ shows: [show(1), show(2, { isLive: true })] }));
};

const press = async (name: string) => {
  await act(async () => {
    shown.button(name, '.shows-dialog').click();
    await settle();
  });
};

test('the key of the recording starts it, pauses it and lets it go on, and starts no second one', () => {
  for (const [phase, asked] of [
    ['none', 'StartRecording'],
    ['running', 'PauseRecording'],
    ['paused', 'ResumeRecording'],
  ] as const) {
    shown.take(recording(phase));
    shown.key('g');
    expect(shown.made.at(-1)).toBe(asked);
  }
  const before = shown.made.length;
  shown.take(recording('stopped', 60));
  shown.key('g');
  expect(shown.made).toHaveLength(before);
  expect(shown.at('.status .said').textContent).toContain('in Shows');
});

test('the status line says how long the recording has run', () => {
  vi.useFakeTimers({ now: new Date('2026-01-01T20:01:00Z') });
  try {
    shown.take(recording('running', 65, '2026-01-01T20:00:58Z'));
    expect(shown.at('.recording').textContent?.trim()).toBe('Recording 1:07');
    act(() => void vi.advanceTimersByTime(3000));
    expect(shown.at('.recording').textContent?.trim()).toBe('Recording 1:10');
    shown.take(recording('paused', 70));
    expect(shown.at('.recording').textContent?.trim()).toBe('Recording pauses 1:10');
  } finally {
    vi.useRealTimers();
  }
});

test('co-hosts see no shows and key no recording', () => {
  shown.take({ role: 'coHost' });
  shown.key('s');
  shown.key('g');
  expect(shown.made).toEqual([]);
  expect(shown.all('.shows-dialog')).toEqual([]);
});

test('the shows are listed, the newest first, with what can be done', () => {
  openList();
  expect(shown.made).toEqual(['Shows']);
  expect(shown.all('.shows > li').map((line) => line.querySelector('strong')?.textContent)).toEqual([
    '2. Evening 2',
    '1. Evening 1',
  ]);
  expect(shown.at('.shows > li:last-child').textContent).toContain('1:02:05');
  expect(shown.at('.shows > li:last-child a').getAttribute('href')).toBe('/stage?show=1&by=presenter');
});

test('a show that was ended does not go on now', () => {
  openList();
  const line = () => shown.at('.shows > li:first-child').textContent;
  expect(line()).toContain('goes on now');
  shown.take({ isOver: true });
  expect(line()).toContain('ended');
  expect(line()).not.toContain('goes on now');
});

test('what is said under the keys of the recording fits them', () => {
  openList();
  const hint = () => shown.at('.recording-keys .hint').textContent;
  shown.take(recording('none'));
  expect(hint()).toContain('when your recorder starts');
  shown.take(recording('running', 65, '2026-01-01T20:00:58Z'));
  expect(hint()).toContain('Pause when your recorder pauses');
  shown.take(recording('paused', 70));
  expect(hint()).toContain('Go on when your recorder goes on');
});

test('the circle of a running recording is filled', () => {
  shown.take(recording('running', 65, '2026-01-01T20:00:58Z'));
  expect(shown.at('.recording path').getAttribute('fill')).toBe('currentColor');
});

test('a new show begins once it is confirmed', async () => {
  openList();
  await shown.submit('.new-show');
  expect(shown.made).toEqual(['Shows']);
  expect(shown.at('.confirm').textContent).toContain('nothing stays on air');

  await shown.submit('.new-show');
  expect(shown.made).toEqual(['Shows', 'BeginShow ""', 'Shows']);
});

test('a kept show goes on once it is confirmed, and a refusal stands in the dialog', async () => {
  openList();
  shown.desk.calls.refusals.set('ReopenShow', 'There is no show 1.');
  await press('Go on with it');
  expect(shown.made).toEqual(['Shows']);
  await press('Go on with show 1');
  expect(shown.made).toEqual(['Shows', 'ReopenShow 1']);
  expect(shown.at('.shows-dialog .said').textContent).toBe('There is no show 1.');
});

test('chapters are edited and kept when they are saved', async () => {
  openList();
  act(() => shown.model.shows.takeChapters(chapters()));
  expect(shown.button('Save chapters').disabled).toBe(true);
  await press('Merge with the one before');
  await press('Save chapters');
  expect(shown.made.at(-1)).toBe(
    'SaveChapters 1 [{"at":0,"title":"Introduction"},{"at":95,"title":"XY-wing, pivot r5c5"}]',
  );
  act(() => shown.model.shows.takeChapters(chapters({ isEdited: true })));
  await press('Back to those of the log');
  expect(shown.made.at(-1)).toBe('SaveChapters 1 null');
});

test('what video sites would ignore is said', () => {
  openList();
  act(() => shown.model.shows.takeChapters(chapters({ broken: ['There are fewer than 3 chapters.'] })));
  expect(shown.at('.broken').textContent).toBe('There are fewer than 3 chapters.');
});

test('the kept chapters are taken along in a form', async () => {
  openList();
  act(() => shown.model.shows.takeChapters(chapters()));
  await press('Copy');
  expect(shown.made.at(-1)).toBe('WriteChapters 1 "list" "25"');
});
