import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { cellNamed, nameOf, neighbour } from '../../grid/cells.ts';
import type { CellName, DeskView } from '../../wire.ts';
import type { Asking } from './asking.ts';
import { only, type Selection, withCell } from './selection.ts';

/** What a digit key writes. */
export type Way = 'digit' | 'blockMark' | 'cellMark' | 'strike';

/** Where the presenter writes, and how. */
export class BoardModel {
  readonly #asking: Asking;
  readonly #desk: ReadonlySignal<DeskView | null>;
  readonly #selection = signal(only(0));
  readonly #way = signal<Way>('digit');
  readonly #showsCandidates = signal(false);
  readonly #pointedAt = signal<readonly CellName[]>([]);
  readonly #lookedAt: ReadonlySignal<readonly CellName[]>;
  /** Cells in which a list is being written, known before the view says so: keys come faster than it does. */
  #written: readonly CellName[] = [];

  /** Cells that something else on the desk points at. */
  readonly pointedAt: ReadonlySignal<ReadonlySet<number>> = computed(() => {
    const names = this.#pointedAt.value.length > 0 ? this.#pointedAt.value : this.#lookedAt.value;
    return new Set(names.map(cellNamed).filter((cell) => cell !== null));
  });

  readonly mayEnter: ReadonlySignal<boolean>;

  /**
   * @param lookedAt Cells that are pointed at for as long as nothing else points at any.
   */
  constructor(
    asking: Asking,
    desk: ReadonlySignal<DeskView | null>,
    lookedAt: ReadonlySignal<readonly CellName[]> = signal([]),
  ) {
    this.#asking = asking;
    this.#desk = desk;
    this.#lookedAt = lookedAt;
    this.mayEnter = computed(() => desk.value?.role === 'presenter');
  }

  get selection(): ReadonlySignal<Selection> {
    return this.#selection;
  }

  get way(): ReadonlySignal<Way> {
    return this.#way;
  }

  get showsCandidates(): ReadonlySignal<boolean> {
    return this.#showsCandidates;
  }

  choose(way: Way): void {
    this.#way.value = way;
  }

  showCandidates(shows: boolean): void {
    this.#showsCandidates.value = shows;
  }

  pointAt(cells: readonly CellName[]): void {
    this.#pointedAt.value = cells;
  }

  /** Chooses cells; a list that was being written in others is finished by it. */
  select(next: Selection): void {
    this.#selection.value = next;
    const written = [...this.#written, ...(this.#desk.value?.writing ?? [])];
    const isLeft = written.some((name) => !next.cells.has(cellNamed(name) ?? -1));
    if (isLeft && this.mayEnter.value) void this.#settle();
  }

  move(down: number, right: number, extends_: boolean): void {
    const cell = neighbour(this.#selection.value.cursor, down, right);
    this.select(extends_ ? withCell(this.#selection.value, cell) : only(cell));
  }

  /** A digit, in the way that is chosen. */
  enter(digit: number): void {
    if (!this.mayEnter.value) return;
    const cells = this.#openNames();
    switch (this.#way.value) {
      case 'digit':
        void this.#asking.ask('PlaceDigit', nameOf(this.#selection.value.cursor), digit);
        return;
      case 'blockMark':
        void this.#asking.ask('ToggleBlockMark', cells, digit);
        return;
      case 'cellMark':
        this.#written = cells;
        void this.#asking.ask('ToggleCellMark', cells, digit);
        return;
      case 'strike':
        void this.#asking.ask('ToggleStrike', cells, digit);
    }
  }

  erase(): void {
    if (this.mayEnter.value) void this.#asking.ask('EraseCells', this.#names());
  }

  settle(): void {
    if (this.mayEnter.value) void this.#settle();
  }

  undo(): void {
    if (this.mayEnter.value) void this.#asking.ask('Undo');
  }

  redo(): void {
    if (this.mayEnter.value) void this.#asking.ask('Redo');
  }

  clear(): void {
    if (this.mayEnter.value) void this.#asking.ask('ClearGrid');
  }

  #settle() {
    this.#written = [];
    return this.#asking.askQuietly('SettleMarks');
  }

  #names(): CellName[] {
    return [...this.#selection.value.cells].sort((a, b) => a - b).map(nameOf);
  }

  /** Marks go into the open ones among the chosen cells; where there are none, the server says why nothing was written. */
  #openNames(): CellName[] {
    const cells = this.#desk.value?.cells;
    const open = this.#names().filter((name) => cells?.[cellNamed(name) ?? -1]?.digit === null);
    return open.length > 0 ? open : this.#names();
  }
}
