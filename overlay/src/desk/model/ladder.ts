import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { DeskView } from '../../wire.ts';
import type { LadderView } from '../../wireLadder.ts';
import type { Asking } from './asking.ts';

/** The ladder, and what of it is looked for. */
export class LadderModel {
  readonly #asking: Asking;
  readonly #view = signal<LadderView | null>(null);

  /** Only the presenter cuts it. */
  readonly mayCut: ReadonlySignal<boolean>;

  /** What is left out, in a few words; empty where nothing is. */
  readonly cut: ReadonlySignal<string> = computed(() => cutWords(this.#view.value));

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>) {
    this.#asking = asking;
    this.mayCut = computed(() => desk.value?.role === 'presenter');
  }

  get view(): ReadonlySignal<LadderView | null> {
    return this.#view;
  }

  take(view: LadderView): void {
    this.#view.value = view;
  }

  /** Nothing past this rule is looked for; null for the whole ladder. */
  stopAt(rule: string | null): void {
    void this.#asking.ask('StopLadder', rule);
  }

  switchFamily(name: string, isOn: boolean): void {
    void this.#asking.ask('SwitchFamily', name, isOn);
  }
}

function cutWords(view: LadderView | null): string {
  if (view === null) return '';
  const last = view.rungs.find(({ rule }) => rule === view.last);
  const off = view.families.filter(({ isOn }) => !isOn).map(({ name }) => name);
  const parts = [
    ...(last ? [`nothing past ${last.name}`] : []),
    ...(off.length > 0 ? [`without ${off.join(', ')}`] : []),
  ];
  return parts.join(', ');
}
