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

  /** The rules that it is to show. */
  readonly featured: ReadonlySignal<readonly FeaturedRule[]>;
  /** Only the presenter chooses them. */
  readonly mayFeature: ReadonlySignal<boolean>;
  /** Whether the run sheet goes on from an older board than the one that is shown. */
  readonly isBehind: ReadonlySignal<boolean>;

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>) {
    this.#asking = asking;
    this.featured = computed(() => desk.value?.featured ?? []);
    this.mayFeature = computed(() => desk.value?.role === 'presenter');
    this.isBehind = computed(() => (this.#view.value?.plannedOf ?? 0) < (desk.value?.scanOf ?? 0));
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

  /** Writes down what is to be said at a step; it is kept by what the step concludes. */
  note({ places, removes }: Concluded, text: string): void {
    void this.#asking.ask('NoteStep', named(places), named(removes), text);
  }
}

const named = (candidates: Concluded['places']) =>
  candidates.map(({ cell, digit }) => `${cell}=${digit}`).join(' ');
