import { computed, type ReadonlySignal } from '@preact/signals';
import type { Called, Cue, DeskView } from '../../wire.ts';
import type { Asking } from './asking.ts';

/** What the audience sees, and what it may see next. */
export class AirModel {
  readonly #asking: Asking;

  readonly onAir: ReadonlySignal<Cue | null>;
  /** What stands by, unless it is on air already. */
  readonly upcoming: ReadonlySignal<Cue | null>;
  readonly standby: ReadonlySignal<Cue | null>;
  /** The cells that viewers call, where they and no deduction stand by or are on air. */
  readonly calledStandby: ReadonlySignal<Called | null>;
  readonly calledOnAir: ReadonlySignal<Called | null>;
  /** Whether this panel may put things on air. */
  readonly mayAir: ReadonlySignal<boolean>;
  readonly coHostMayAir: ReadonlySignal<boolean>;
  readonly isPresenter: ReadonlySignal<boolean>;

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>) {
    this.#asking = asking;
    this.onAir = computed(() => desk.value?.onAir ?? null);
    this.standby = computed(() => desk.value?.standby ?? null);
    this.calledStandby = computed(() => desk.value?.calledStandby ?? null);
    this.calledOnAir = computed(() => desk.value?.calledOnAir ?? null);
    this.upcoming = computed(() => {
      const standby = this.standby.value;
      return standby?.deduction.id === this.onAir.value?.deduction.id ? null : standby;
    });
    this.coHostMayAir = computed(() => desk.value?.coHostMayAir ?? false);
    this.isPresenter = computed(() => desk.value?.role === 'presenter');
    this.mayAir = computed(() => this.isPresenter.value || this.coHostMayAir.value);
  }

  next(): void {
    void this.#asking.ask('NextGrade');
  }

  standByCalls(): void {
    void this.#asking.ask('StandByCalls');
  }

  back(): void {
    void this.#asking.ask('PreviousGrade');
  }

  /** Asked for even if nothing seems to be on air: what was put there just now may not be known here yet. */
  clear(): void {
    void this.#asking.askQuietly('ClearAir');
  }

  allowCoHost(allowed: boolean): void {
    void this.#asking.ask('AllowCoHostOnAir', allowed);
  }
}
