import { type ReadonlySignal, signal } from '@preact/signals';

const slot = 'companion.singleKeys';

/** What this browser remembers of the presenter's habits. */
export class Settings {
  readonly #store: Pick<Storage, 'getItem' | 'setItem'> | null;
  readonly #singleKeys = signal(true);

  constructor(store: Pick<Storage, 'getItem' | 'setItem'> | null) {
    this.#store = store;
    this.#singleKeys.value = store?.getItem(slot) !== 'off';
  }

  /** Whether keys that write a single character do something everywhere on the desk (WCAG 2.2, 2.1.4). */
  get singleKeys(): ReadonlySignal<boolean> {
    return this.#singleKeys;
  }

  useSingleKeys(on: boolean): void {
    this.#singleKeys.value = on;
    this.#store?.setItem(slot, on ? 'on' : 'off');
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
