import { type ReadonlySignal, signal } from '@preact/signals';
import { ShownPicture } from '../picture/shown.ts';
import type { Frame, OverlayView } from '../wire.ts';
import type { Picture } from '../wirePicture.ts';

/** What the overlay shows. Before the first view, and for as long as nothing is on air, that is nothing. */
export class OverlayModel {
  readonly #view = signal<OverlayView | null>(null);
  readonly #shown = new ShownPicture();

  get frame(): Frame | null {
    return this.#view.value?.frame ?? null;
  }

  get showsFrame(): boolean {
    return this.#view.value?.showsFrame ?? false;
  }

  get code(): string | null {
    return this.#view.value?.code ?? null;
  }

  get picture(): ReadonlySignal<Picture | null> {
    return this.#shown.picture;
  }

  take(view: OverlayView): void {
    this.#view.value = view;
    this.#shown.offer(view.picture);
  }

  /** The line is down: the frame's outline and the code go at once, the picture after a while. */
  lose(): void {
    const view = this.#view.value;
    if (view?.showsFrame || view?.code) this.#view.value = { ...view, showsFrame: false, code: null };
    this.#shown.lose();
  }
}
