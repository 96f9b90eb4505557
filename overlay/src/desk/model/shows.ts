import { type ReadonlySignal, signal } from '@preact/signals';
import type { DeskMethod } from '../../connection/deskCalls.ts';
import type { DeskView } from '../../wire.ts';
import type { DeskMethods } from '../../wireMethods.ts';
import type { ChapterMark, ChaptersView, SavedFile, ShowsView } from '../../wireShows.ts';
import type { Asking } from './asking.ts';

/** What a page does with a text that comes for it. */
export interface Texts {
  copy(text: string): Promise<void>;
  save(file: SavedFile): void;
  /** Sends a file to be kept; the plain sentence of a refusal, or null. */
  send(file: Blob): Promise<string | null>;
}

/** The kept shows, the chapters of one of them, and the recording of the one that goes on. */
export class ShowsModel {
  readonly #asking: Asking;
  readonly #desk: ReadonlySignal<DeskView | null>;
  readonly #texts: Texts;
  readonly #view = signal<ShowsView | null>(null);
  readonly #chapters = signal<ChaptersView | null>(null);
  readonly #said = signal('');
  #wantsCopy = false;

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>, texts: Texts = pageTexts) {
    this.#asking = asking;
    this.#desk = desk;
    this.#texts = texts;
  }

  get view(): ReadonlySignal<ShowsView | null> {
    return this.#view;
  }

  /** The chapters that are being edited, or null for the list of shows. */
  get chapters(): ReadonlySignal<ChaptersView | null> {
    return this.#chapters;
  }

  /** What came of the last thing asked for. */
  get said(): ReadonlySignal<string> {
    return this.#said;
  }

  take(view: ShowsView): void {
    this.#view.value = view;
  }

  takeChapters(view: ChaptersView): void {
    this.#chapters.value = view;
  }

  refuse(sentence: string): void {
    this.#said.value = sentence;
  }

  async takeFile(file: SavedFile): Promise<void> {
    if (!this.#wantsCopy) {
      this.#texts.save(file);
      this.#said.value = `Saved as ${file.name}.`;
      return;
    }
    try {
      await this.#texts.copy(file.text);
      this.#said.value = 'Copied.';
    } catch {
      this.#said.value = 'The browser did not let it be copied: save it.';
    }
  }

  list(): void {
    this.#said.value = '';
    this.#chapters.value = null;
    void this.#ask('Shows');
  }

  async begin(title: string): Promise<void> {
    if (await this.#ask('BeginShow', title)) await this.#ask('Shows');
  }

  async reopen(show: number): Promise<void> {
    if (await this.#ask('ReopenShow', show)) await this.#ask('Shows');
  }

  openChapters(show: number): void {
    void this.#ask('Chapters', show);
  }

  closeChapters(): void {
    this.list();
  }

  saveChapters(show: number, chapters: readonly ChapterMark[] | null): void {
    this.#said.value = '';
    void this.#ask('SaveChapters', show, chapters);
  }

  setOffset(show: number, seconds: number): void {
    void this.#ask('SetOffset', show, seconds);
  }

  writeChapters(show: number, form: string, rate: string, copies: boolean): void {
    this.#wantsCopy = copies;
    void this.#ask('WriteChapters', show, form, rate);
  }

  exportShow(show: number): void {
    this.#wantsCopy = false;
    void this.#ask('ExportShow', show);
  }

  async importShow(file: Blob): Promise<void> {
    const refusal = await this.#texts.send(file);
    this.#said.value = refusal ?? 'Kept among the shows.';
    if (refusal === null) await this.#ask('Shows');
  }

  /** One key: the recording starts now, pauses, goes on. Stopping is for the dialog, so that no second one starts by mistake. */
  keyRecording(): void {
    const phase = this.#desk.value?.recording.phase;
    if (phase === 'running') void this.#asking.ask('PauseRecording');
    else if (phase === 'paused') void this.#asking.ask('ResumeRecording');
    else if (phase === 'none') void this.#asking.ask('StartRecording');
    else this.#asking.say('The recording is over: start another one in Shows.');
  }

  startRecording(): void {
    void this.#asking.ask('StartRecording');
  }

  stopRecording(): void {
    void this.#asking.ask('StopRecording');
  }

  /** A dialog covers the line in which refusals stand. */
  async #ask<M extends DeskMethod>(method: M, ...args: Parameters<DeskMethods[M]>): Promise<boolean> {
    const { refusal } = await this.#asking.askQuietly(method, ...args);
    if (refusal !== null) this.#said.value = refusal;
    return refusal === null;
  }
}

const pageTexts: Texts = {
  copy: (text) => navigator.clipboard.writeText(text),
  save({ name, text }) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'application/octet-stream' }));
    link.download = name;
    link.click();
    // The browser has taken it by then.
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  },
  async send(file) {
    try {
      const response = await fetch('/hubs/presenter/shows', { method: 'POST', body: file });
      if (response.ok) return null;
      return (await response.text()).trim() || 'The file could not be kept: try again.';
    } catch {
      return 'Not connected: this was not done.';
    }
  },
};
