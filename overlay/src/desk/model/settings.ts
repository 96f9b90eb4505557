import { type ReadonlySignal, signal } from '@preact/signals';

const slots = { singleKeys: 'companion.singleKeys', runSheet: 'companion.runSheet' };

/** What this browser remembers of the presenter's habits. */
export class Settings {
  readonly #store: Pick<Storage, 'getItem' | 'setItem'> | null;
  readonly #singleKeys = signal(true);
  readonly #runSheet = signal(false);

  constructor(store: Pick<Storage, 'getItem' | 'setItem'> | null) {
    this.#store = store;
    this.#singleKeys.value = store?.getItem(slots.singleKeys) !== 'off';
    this.#runSheet.value = store?.getItem(slots.runSheet) === 'on';
  }

  /** Whether keys that write a single character do something everywhere on the desk (WCAG 2.2, 2.1.4). */
  get singleKeys(): ReadonlySignal<boolean> {
    return this.#singleKeys;
  }

  /** Whether the run sheet stands beside the board. */
  get runSheet(): ReadonlySignal<boolean> {
    return this.#runSheet;
  }

  useSingleKeys(on: boolean): void {
    this.#singleKeys.value = on;
    this.#keep('singleKeys', on);
  }

  showRunSheet(on: boolean): void {
    this.#runSheet.value = on;
    this.#keep('runSheet', on);
  }

  #keep(habit: keyof typeof slots, on: boolean): void {
    this.#store?.setItem(slots[habit], on ? 'on' : 'off');
  }
}

/** Storage throws where the browser was told to keep nothing; then a habit lasts as long as the page. */
export function habitStorage(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}
