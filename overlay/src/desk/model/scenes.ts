import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { DeskView, Frame, Scene } from '../../wire.ts';
import { firstFrame } from '../scenes/frame.ts';
import type { Asking } from './asking.ts';

/** The scene that is being placed, and where its board is to lie. */
export interface Placing {
  scene: string;
  frame: Frame;
}

/** Runs something before the next picture of the screen is drawn. */
export type NextPicture = (run: () => void) => void;

/** The scenes of the broadcast, and the placing of the board in one of them. */
export class ScenesModel {
  readonly #asking: Asking;
  readonly #nextPicture: NextPicture;
  readonly #placing = signal<Placing | null>(null);
  #isSending = false;

  readonly scenes: ReadonlySignal<readonly Scene[]>;

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>, nextPicture: NextPicture) {
    this.#asking = asking;
    this.#nextPicture = nextPicture;
    this.scenes = computed(() => desk.value?.scenes ?? []);
  }

  get placing(): ReadonlySignal<Placing | null> {
    return this.#placing;
  }

  /** Begins to place a scene's board: its outline shows on the broadcast. */
  place(scene: string): void {
    const frame = this.scenes.value.find(({ name }) => name === scene)?.frame ?? firstFrame;
    this.#placing.value = { scene, frame };
    void this.#asking.ask('ShowFrame', scene);
  }

  /** Sent at most once for each picture of the screen, the newest frame winning. */
  change(frame: Frame): void {
    const placing = this.#placing.value;
    if (!placing) return;
    this.#placing.value = { ...placing, frame };
    if (this.#isSending) return;
    this.#isSending = true;
    this.#nextPicture(() => this.#send());
  }

  /** The outline goes from the broadcast. */
  finish(): void {
    if (!this.#placing.value) return;
    if (this.#isSending) this.#send();
    this.#placing.value = null;
    void this.#asking.ask('ShowFrame', null);
  }

  /** Answers with the refusal, which stands beside the name and not at the foot of the desk; null where it was done. */
  async add(name: string): Promise<string | null> {
    const reply = await this.#asking.askQuietly('PlaceFrame', name, firstFrame);
    return reply.refusal;
  }

  forget(name: string): void {
    if (this.#placing.value?.scene === name) this.finish();
    void this.#asking.ask('ForgetScene', name);
  }

  #send(): void {
    const placing = this.#placing.value;
    if (!this.#isSending || !placing) return;
    this.#isSending = false;
    void this.#asking.ask('PlaceFrame', placing.scene, placing.frame);
  }
}
