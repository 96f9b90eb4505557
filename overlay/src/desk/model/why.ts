import { type ReadonlySignal, signal } from '@preact/signals';
import { nameOf } from '../../grid/cells.ts';
import type { CellName, DeskView } from '../../wire.ts';
import type { WhyView } from '../../wireProofs.ts';
import type { Asking } from './asking.ts';

/** What is asked: a cell, and the digit once one is chosen. */
export interface Question {
  cell: CellName;
  digit: number | null;
}

/** Questions about a cell and their answers, one at a time. */
export class WhyModel {
  readonly #asking: Asking;
  readonly #desk: ReadonlySignal<DeskView | null>;
  readonly #question = signal<Question | null>(null);
  readonly #answer = signal<WhyView | null>(null);
  readonly #refusal = signal('');

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>) {
    this.#asking = asking;
    this.#desk = desk;
  }

  get question(): ReadonlySignal<Question | null> {
    return this.#question;
  }

  /** The answer to the question, or null while there is none. */
  get answer(): ReadonlySignal<WhyView | null> {
    return this.#answer;
  }

  /** Why there will be no answer; empty while there may be one. */
  get refusal(): ReadonlySignal<string> {
    return this.#refusal;
  }

  /** Begins with a cell; the digit that stands there is asked about at once. */
  begin(cell: number): void {
    this.#set({ cell: nameOf(cell), digit: null });
    const digit = this.#desk.value?.cells[cell]?.digit ?? null;
    if (digit !== null) void this.ask(digit);
  }

  async ask(digit: number): Promise<void> {
    const cell = this.#question.value?.cell;
    if (cell === undefined) return;
    const question = { cell, digit };
    this.#set(question);
    const { refusal } = await this.#asking.askQuietly('Why', cell, digit);
    if (this.#question.value === question) this.#refusal.value = refusal ?? '';
  }

  /** An answer to a question that was asked before, and is asked no longer, is left. */
  take(view: WhyView): void {
    const { cell, digit } = this.#question.value ?? {};
    if (view.cell === cell && view.digit === digit) this.#answer.value = view;
  }

  #set(question: Question): void {
    this.#question.value = question;
    this.#answer.value = null;
    this.#refusal.value = '';
  }
}
