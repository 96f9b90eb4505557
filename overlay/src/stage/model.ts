import { type ReadonlySignal, signal } from '@preact/signals';
import { ShownPicture } from '../picture/shown.ts';
import type { StageView } from '../wire.ts';
import type { Picture } from '../wirePicture.ts';

/** The board on air, and what is drawn over it. */
export class StageModel {
  readonly #view = signal<StageView | null>(null);
  readonly #shown = new ShownPicture();

  get view(): ReadonlySignal<StageView | null> {
    return this.#view;
  }

  get picture(): ReadonlySignal<Picture | null> {
    return this.#shown.picture;
  }

  take(view: StageView): void {
    this.#view.value = view;
    this.#shown.offer(view.picture);
  }

  lose(): void {
    this.#shown.lose();
  }
}
