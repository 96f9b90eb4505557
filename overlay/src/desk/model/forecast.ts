import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { CellName, DeskView } from '../../wire.ts';
import type { ForecastLine, ForecastView } from '../../wireForecast.ts';

/** When the featured rules come, and whose cells are being watched. */
export class ForecastModel {
  readonly #view = signal<ForecastView | null>(null);
  readonly #watched = signal<string | null>(null);

  /** The rules that are still featured. */
  readonly lines: ReadonlySignal<readonly ForecastLine[]>;
  /** The rule whose cells show on this board; null for none. */
  readonly watched: ReadonlySignal<string | null>;
  readonly watchedCells: ReadonlySignal<readonly CellName[]>;
  /** Whether it looks ahead from an older board than the one that is shown. */
  readonly isBehind: ReadonlySignal<boolean>;

  constructor(desk: ReadonlySignal<DeskView | null>) {
    this.lines = computed(() => {
      const featured = new Set(desk.value?.featured.map(({ rule }) => rule));
      return (this.#view.value?.rules ?? []).filter(({ rule }) => featured.has(rule));
    });
    const line = computed(() => this.lines.value.find(({ rule }) => rule === this.#watched.value));
    this.watched = computed(() => line.value?.rule ?? null);
    this.watchedCells = computed(() => (line.value ? cellsOf(line.value) : []));
    this.isBehind = computed(() => (this.#view.value?.sequence ?? 0) < (desk.value?.scanOf ?? 0));
  }

  get view(): ReadonlySignal<ForecastView | null> {
    return this.#view;
  }

  take(view: ForecastView): void {
    this.#view.value = view;
  }

  /** Shows a rule's cells until another one's are wanted, or none. */
  watch(rule: string | null): void {
    this.#watched.value = rule;
  }

  /** The next rule that has cells to watch; after the last one none. */
  watchNext(): void {
    const worth = this.lines.value.filter((line) => cellsOf(line).length > 0).map(({ rule }) => rule);
    const at = this.watched.value === null ? -1 : worth.indexOf(this.watched.value);
    this.watch(worth[at + 1] ?? null);
  }
}

/** The cells of the pattern that comes first; where none does, those of what one candidate is in the way of. */
export function cellsOf({ watch, nearMisses }: ForecastLine): readonly CellName[] {
  return watch.length > 0 ? watch : [...new Set(nearMisses.flatMap(({ pattern }) => pattern))];
}
