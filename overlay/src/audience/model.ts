import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { nameOf } from '../grid/cells.ts';
import type { Grade, StageCell } from '../wire.ts';
import type { AudienceAnswer, AudienceMethods, AudienceView } from '../wireAudience.ts';
import type { Shape } from '../wirePicture.ts';
import { answerWords } from './words.ts';
import { cellsWritten } from './written.ts';

/** What a viewer's page can ask the server. */
export interface Asker {
  invoke(method: string, ...args: unknown[]): Promise<unknown>;
}

/** An answer as it stands on the page. */
export interface Told {
  words: readonly string[];
  shapes: readonly Shape[];
  /** The board that it was about, to tell when that has moved on. */
  about: string;
}

const cutOff = 'Not answered: the connection broke. Ask again when it is back.';

/** A viewer's page: the board, the cell that is chosen on it, and the last answer. */
export class AudienceModel {
  readonly #asker: Asker;
  readonly #view = signal<AudienceView | null>(null);
  readonly #chosen = signal<number | null>(null);
  readonly #told = signal<Told | null>(null);
  readonly #isAsking = signal(false);
  readonly #cells = computed(() => {
    const board = this.#view.value?.board;
    return board ? cellsWritten(board) : null;
  });

  constructor(asker: Asker) {
    this.#asker = asker;
  }

  get view(): ReadonlySignal<AudienceView | null> {
    return this.#view;
  }

  /** The 81 cells; null as long as there is no board. */
  get cells(): ReadonlySignal<readonly StageCell[] | null> {
    return this.#cells;
  }

  /** The cell that is asked about; null for the whole board. */
  get chosen(): ReadonlySignal<number | null> {
    return this.#chosen;
  }

  get told(): ReadonlySignal<Told | null> {
    return this.#told;
  }

  get isAsking(): ReadonlySignal<boolean> {
    return this.#isAsking;
  }

  /** Whether the presenter has gone on since the last answer. */
  get hasMovedOn(): boolean {
    return this.#told.value !== null && this.#told.value.about !== this.#placed;
  }

  /** The cell that a hint is to touch: the chosen one, if it is open. */
  get touched(): number | null {
    const cell = this.#chosen.value;
    return cell !== null && this.#cells.value?.[cell]?.digit === null ? cell : null;
  }

  take(view: AudienceView): void {
    const isOther = view.board?.givens !== this.#view.value?.board?.givens;
    this.#view.value = view;
    if (!isOther) return;
    this.#chosen.value = null;
    this.#told.value = null;
  }

  /** Chooses a cell; once more takes the choice back. */
  choose(cell: number | null): void {
    this.#chosen.value = cell === this.#chosen.value ? null : cell;
  }

  /** Takes the answer off the page. */
  clear(): void {
    this.#told.value = null;
  }

  hint(grade: Grade | null): Promise<void> {
    return this.#ask('Hint', this.touched === null ? null : nameOf(this.touched), grade);
  }

  /** Why the digit in the chosen cell is there. */
  async why(): Promise<void> {
    if (this.#named !== null) await this.#ask('Why', this.#named);
  }

  /** "I have found it", of the chosen cell. */
  async call(digit: number | null): Promise<void> {
    if (this.#named !== null) await this.#ask('Call', this.#named, digit);
  }

  get #named(): string | null {
    return this.#chosen.value === null ? null : nameOf(this.#chosen.value);
  }

  get #placed(): string {
    return this.#view.value?.board?.placed ?? '';
  }

  async #ask<M extends keyof AudienceMethods>(
    method: M,
    ...args: Parameters<AudienceMethods[M]>
  ): Promise<void> {
    if (this.#isAsking.value) return;
    this.#isAsking.value = true;
    const about = this.#placed;
    try {
      const answer = (await this.#asker.invoke(method, ...args)) as AudienceAnswer;
      const words = answerWords(answer, this.#view.value);
      this.#told.value = { words, shapes: answer.picture?.shapes ?? [], about };
    } catch {
      this.#told.value = { words: [cutOff], shapes: [], about };
    } finally {
      this.#isAsking.value = false;
    }
  }
}
