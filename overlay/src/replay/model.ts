import { type ReadonlySignal, signal } from '@preact/signals';
import { StageModel } from '../stage/model.ts';
import type { StageView } from '../wire.ts';
import type { OpenedReplay, TimelineMark } from '../wireReplay.ts';
import { Playback } from './playback.ts';

/** The part of a connection that asks. */
export interface Asked {
  invoke<T>(method: string, ...args: unknown[]): Promise<T>;
}

/** What the address of a replay asks for. */
export interface Wanted {
  show: string;
  /** Null where the replay waits for its key. */
  speed: number | null;
  /** Whether the line of controls is there at first. */
  controls: boolean;
}

/** How a replay is doing, as its line of controls says it. */
export interface Position {
  title: string;
  index: number;
  count: number;
  moment: TimelineMark | null;
  isPlaying: boolean;
  speed: number;
  cutsWaits: boolean;
}

/** A stored show on a stage of its own. One moment is asked for at a time, so that a fast replay leaves some out and never lags. */
export class ReplayModel {
  readonly stage = new StageModel();
  readonly #hub: Asked;
  readonly #wanted: Wanted;
  readonly #refusal = signal('');
  readonly #position = signal<Position | null>(null);
  #playback: Playback | null = null;
  #title = '';
  #shown = 0;
  #isAsking = false;

  constructor(hub: Asked, wanted: Wanted) {
    this.#hub = hub;
    this.#wanted = wanted;
  }

  get startsWithControls(): boolean {
    return this.#wanted.controls;
  }

  /** Why there is nothing to play; empty where there is. */
  get refusal(): ReadonlySignal<string> {
    return this.#refusal;
  }

  get position(): ReadonlySignal<Position | null> {
    return this.#position;
  }

  /** The line is up; a replay that was under way goes on where it was. */
  async open(): Promise<void> {
    const { refusal, timeline } = await this.#hub.invoke<OpenedReplay>('OpenShow', this.#wanted.show);
    this.#refusal.value = refusal ?? '';
    if (!timeline) return;
    this.#title = timeline.title;
    if (!this.#playback) {
      this.#playback = new Playback(timeline.moments);
      if (this.#wanted.speed !== null) {
        this.#playback.setSpeed(this.#wanted.speed);
        this.#playback.toggle();
      }
    }
    this.#shown = 0;
    this.#isAsking = false;
    this.#show();
  }

  tick(seconds: number): void {
    if (!this.#playback?.isPlaying) return;
    this.#playback.tick(seconds);
    this.#show();
  }

  /** Does something with the playback. */
  control(act: (playback: Playback) => void): void {
    if (!this.#playback) return;
    act(this.#playback);
    this.#show();
  }

  #show(): void {
    const playback = this.#playback;
    if (!playback) return;
    const { index, count, moment, isPlaying, speed, cutsWaits } = playback;
    this.#position.value = { title: this.#title, index, count, moment, isPlaying, speed, cutsWaits };
    void this.#ask();
  }

  async #ask(): Promise<void> {
    const wanted = this.#playback?.moment?.number;
    if (this.#isAsking || wanted === undefined || wanted === this.#shown) return;
    this.#isAsking = true;
    try {
      const view = await this.#hub.invoke<StageView | null>('StageAfter', wanted);
      this.#shown = wanted;
      if (view) this.stage.take(view);
      this.#isAsking = false;
      void this.#ask();
    } catch {
      // The line is down: when it is up again the show is opened anew.
      this.#isAsking = false;
    }
  }
}

/** Reads the address; null where it names no show. */
export function wantedOf(search: string): Wanted | null {
  const asked = new URLSearchParams(search);
  const show = asked.get('show');
  if (show === null) return null;
  const speed = Number(asked.get('speed') ?? Number.NaN);
  return { show, speed: speed > 0 ? speed : null, controls: asked.get('controls') !== 'no' };
}
