import { type ReadonlySignal, signal } from '@preact/signals';
import type { AskLimits, CellCalls, ViewersView } from '../../wire.ts';
import type { Asking } from './asking.ts';

/** What comes of viewers' asks, and how far they may go. */
export class ViewersModel {
  readonly #asking: Asking;
  readonly #view = signal<ViewersView | null>(null);
  readonly #showsCalls = signal(false);

  constructor(asking: Asking) {
    this.#asking = asking;
  }

  get view(): ReadonlySignal<ViewersView | null> {
    return this.#view;
  }

  /** Whether the desk's own board shows how many viewers name which cell. */
  get showsCalls(): ReadonlySignal<boolean> {
    return this.#showsCalls;
  }

  /** What the desk's board shows of calls. */
  get shownCalls(): readonly CellCalls[] {
    return this.#showsCalls.value ? (this.#view.value?.calls ?? []) : [];
  }

  take(view: ViewersView): void {
    this.#view.value = view;
  }

  showCalls(on: boolean): void {
    this.#showsCalls.value = on;
  }

  /** Changes a part of the limits and leaves the others. */
  limit(change: Partial<AskLimits>): void {
    const limits = this.#view.value?.limits;
    if (!limits) return;
    const { open, highest, quietOnAir } = { ...limits, ...change };
    void this.#asking.ask('LimitAsks', open, highest, quietOnAir);
  }

  setDelay(seconds: number): void {
    void this.#asking.ask('SetDelay', seconds);
  }

  useMeasuredDelay(): void {
    void this.#asking.ask('UseMeasuredDelay');
  }

  /** Shows a new code on the overlay, or takes the one that is there off it. */
  toggleCode(): void {
    void (this.#view.value?.code ? this.#asking.ask('HideDelayCode') : this.#asking.ask('ShowDelayCode'));
  }

  endShow(): void {
    void this.#asking.ask('EndShow');
  }
}
