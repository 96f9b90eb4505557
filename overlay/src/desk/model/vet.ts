import { type ReadonlySignal, signal } from '@preact/signals';
import { cellNamed } from '../../grid/cells.ts';
import type { Correction, FeaturedRule, VetResult, VettedView } from '../../wirePlan.ts';
import type { Asking } from './asking.ts';

/** Vets the grid that is typed, one at a time. */
export class VetModel {
  readonly #asking: Asking;
  readonly #grid = signal<string | null>(null);
  readonly #result = signal<VetResult | null>(null);
  readonly #refusal = signal('');

  constructor(asking: Asking) {
    this.#asking = asking;
  }

  /** The grid that is being vetted, or was; null where none is. */
  get grid(): ReadonlySignal<string | null> {
    return this.#grid;
  }

  /** What was found out, or null while there is nothing. */
  get result(): ReadonlySignal<VetResult | null> {
    return this.#result;
  }

  /** Why nothing will be found out; empty while something may be. */
  get refusal(): ReadonlySignal<string> {
    return this.#refusal;
  }

  async ask(grid: string, featured: readonly FeaturedRule[]): Promise<void> {
    this.#set(grid);
    const { refusal } = await this.#asking.askQuietly(
      'Vet',
      grid,
      featured.map(({ rule }) => rule),
    );
    if (this.#grid.value === grid) this.#refusal.value = refusal ?? '';
  }

  /** What was found out about another grid than the last one is left. */
  take(view: VettedView): void {
    if (view.grid === this.#grid.value) this.#result.value = view.result;
  }

  /** What was found out does not hold for what is typed now. */
  forget(): void {
    this.#set(null);
  }

  #set(grid: string | null): void {
    this.#grid.value = grid;
    this.#result.value = null;
    this.#refusal.value = '';
  }
}

/** The grid with one cell changed, as nine lines. */
export function corrected(puzzle: string, { cell, to }: Correction): string {
  const at = cellNamed(cell) ?? 0;
  const text = `${puzzle.slice(0, at)}${to ?? '.'}${puzzle.slice(at + 1)}`;
  return (text.match(/.{9}/g) ?? []).join('\n');
}
