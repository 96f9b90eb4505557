import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { DeskView } from '../../wire.ts';
import type { FeaturedRule, RunSheetView, StepNote } from '../../wirePlan.ts';
import type { Asking } from './asking.ts';

/** What a step concludes. */
type Concluded = Omit<StepNote, 'text'>;

/** What is planned for the puzzle on the board. */
export class PlanModel {
  readonly #asking: Asking;
  readonly #view = signal<RunSheetView | null>(null);
  readonly #visits = signal(0);
  readonly #puzzle: ReadonlySignal<string>;
  /** What stood there, and for which puzzle, when somebody began to write a note. */
  readonly #held = signal<{ view: RunSheetView | null; puzzle: string } | null>(null);

  /** The rules that it is to show. */
  readonly featured: ReadonlySignal<readonly FeaturedRule[]>;
  /** Only the presenter chooses them. */
  readonly mayFeature: ReadonlySignal<boolean>;
  /** Whether the run sheet goes on from an older board than the one that is shown. */
  readonly isBehind: ReadonlySignal<boolean>;
  /** The run sheet as it is shown. It stands still while a note is written: a step that goes would take the field with it. */
  readonly shown: ReadonlySignal<RunSheetView | null>;

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>) {
    this.#asking = asking;
    this.featured = computed(() => desk.value?.featured ?? []);
    this.mayFeature = computed(() => desk.value?.role === 'presenter');
    this.isBehind = computed(() => (this.#view.value?.plannedOf ?? 0) < (desk.value?.scanOf ?? 0));
    this.#puzzle = computed(() => givensOf(desk.value));
    this.shown = computed(() => {
      const held = this.#held.value;
      return held?.puzzle === this.#puzzle.value ? held.view : this.#view.value;
    });
  }

  get view(): ReadonlySignal<RunSheetView | null> {
    return this.#view;
  }

  /** How often somebody wanted to go to the run sheet; each time the focus goes there. */
  get visits(): ReadonlySignal<number> {
    return this.#visits;
  }

  goThere(): void {
    this.#visits.value += 1;
  }

  take(view: RunSheetView): void {
    this.#view.value = view;
  }

  feature(featured: readonly FeaturedRule[]): void {
    void this.#asking.ask('FeatureRules', featured);
  }

  beginNote(): void {
    this.#held.value = { view: this.#view.value, puzzle: this.#puzzle.value };
  }

  endNote(): void {
    this.#held.value = null;
  }

  /** Writes down what is to be said at a step; it is kept by what the step concludes. */
  note({ places, removes }: Concluded, text: string): void {
    // What was begun for another puzzle is not said at this one.
    if (this.#held.value && this.#held.value.puzzle !== this.#puzzle.value) return;
    void this.#asking.ask('NoteStep', named(places), named(removes), text);
  }
}

const named = (candidates: Concluded['places']) =>
  candidates.map(({ cell, digit }) => `${cell}=${digit}`).join(' ');

const givensOf = (desk: DeskView | null) =>
  desk?.cells.map(({ digit, isGiven }) => (isGiven ? digit : '.')).join('') ?? '';
