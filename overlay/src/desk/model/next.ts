import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import type { DeskView, NextView, OpenDeduction } from '../../wire.ts';
import type { Asking } from './asking.ts';
import { find, groupByRule, type RuleGroup } from './finder.ts';

/** The open deductions, and which of them is chosen. */
export class NextModel {
  readonly #asking: Asking;
  readonly #desk: ReadonlySignal<DeskView | null>;
  readonly #view = signal<NextView | null>(null);
  readonly #text = signal('');
  readonly #rule = signal('');
  /** Asked to stand by, and not yet confirmed. */
  readonly #asked = signal<string | null>(null);
  /** Looked at by a co-host. */
  readonly #lookedAt = signal<string | null>(null);

  /** Every rule with an open deduction, whatever the filter. */
  readonly rules: ReadonlySignal<RuleGroup[]> = computed(() =>
    groupByRule(this.#view.value?.deductions ?? []),
  );

  readonly found: ReadonlySignal<OpenDeduction[]> = computed(() =>
    find(this.#view.value?.deductions ?? [], this.#text.value, this.#rule.value),
  );

  readonly groups: ReadonlySignal<RuleGroup[]> = computed(() => groupByRule(this.found.value));

  /** The deduction that stands by or was asked to; at a co-host's desk the one that the co-host looks at. */
  readonly chosen: ReadonlySignal<string | null>;

  /** What is known of the deduction that is chosen; null also where it is not open any more. */
  readonly deduction: ReadonlySignal<OpenDeduction | null>;

  /** Whether the list belongs to an earlier state than the board beside it, or is not finished. */
  readonly isBehind: ReadonlySignal<boolean>;

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>) {
    this.#asking = asking;
    this.#desk = desk;
    this.chosen = computed(() =>
      this.#isCoHosts
        ? this.#lookedAt.value
        : (this.#asked.value ?? desk.value?.standby?.deduction.id ?? null),
    );
    this.deduction = computed(() => {
      const standby = desk.value?.standby?.deduction;
      if (!this.#isCoHosts) return standby ?? null;
      const id = this.#lookedAt.value;
      const open = this.#view.value?.deductions.find((each) => each.id === id);
      return open ?? (standby?.id === id ? (standby ?? null) : null);
    });
    this.isBehind = computed(() => {
      const view = this.#view.value;
      return (view?.goesOn ?? false) || (view?.sequence ?? 0) < (desk.value?.scanOf ?? 0);
    });
  }

  get view(): ReadonlySignal<NextView | null> {
    return this.#view;
  }

  get text(): ReadonlySignal<string> {
    return this.#text;
  }

  /** The rule that alone is listed; empty for all. */
  get rule(): ReadonlySignal<string> {
    return this.#rule;
  }

  take(view: NextView): void {
    batch(() => {
      this.#view.value = view;
      // A rule that has no open deduction any more cannot be chosen in the list of rules, nor left.
      const isOpen = view.deductions.some(({ rule }) => rule === this.#rule.value);
      if (!isOpen && !view.goesOn) this.#rule.value = '';
    });
  }

  /** What was asked for has come to stand by. */
  confirm(): void {
    if (this.#desk.value?.standby?.deduction.id === this.#asked.value) this.#asked.value = null;
  }

  filter(text: string): void {
    this.#text.value = text;
  }

  show(rule: string): void {
    this.#rule.value = rule;
  }

  /** The presenter has it stand by; a co-host looks at it, which nobody else sees. */
  choose(id: string): void {
    if (this.#isCoHosts) this.#lookedAt.value = id;
    else void this.standBy(id);
  }

  async standBy(id: string): Promise<void> {
    if (id === (this.#asked.value ?? this.#desk.value?.standby?.deduction.id)) return;
    this.#asked.value = id;
    const reply = await this.#asking.ask('StandBy', id);
    if (reply.refusal !== null && this.#asked.value === id) this.#asked.value = null;
  }

  /** Chooses the next deduction of the list, or the one before. */
  step(by: 1 | -1): void {
    const found = this.found.value;
    const at = found.findIndex(({ id }) => id === this.chosen.value);
    const next = found[at === -1 ? (by === 1 ? 0 : found.length - 1) : at + by];
    if (next) this.choose(next.id);
  }

  standDown(): void {
    this.#asked.value = null;
    void this.#asking.ask('StandDown');
  }

  /** The presenter has said or used what stands by, or else what is on air. */
  markUsed(): void {
    const id = this.chosen.value ?? this.#desk.value?.onAir?.deduction.id;
    if (id !== undefined) void this.#asking.ask('MarkUsed', id);
  }

  get #isCoHosts(): boolean {
    return this.#desk.value?.role === 'coHost';
  }
}
