import { Newest } from './newest.ts';

/** The part of SignalR's connection that receives. */
export interface Receiver {
  on(method: string, callback: (view: never) => void): void;
}

/** The views that a page is sent, of each kind only the newest. */
export class Views {
  readonly #hub: Receiver;
  readonly #kinds: Newest[] = [];

  constructor(hub: Receiver) {
    this.#hub = hub;
  }

  on<V extends { sequence: number }>(method: string, take: (view: V) => void): void {
    const newest = new Newest();
    this.#kinds.push(newest);
    this.#hub.on(method, (view: V) => {
      if (newest.admits(view)) take(view);
    });
  }

  /** What comes from now on belongs to another connection. */
  startAnew(): void {
    for (const kind of this.#kinds) kind.startAnew();
  }
}
