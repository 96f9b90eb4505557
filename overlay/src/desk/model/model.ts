import { type ReadonlySignal, signal } from '@preact/signals';
import type { Calls } from '../../connection/deskCalls.ts';
import type { LineState } from '../../connection/line.ts';
import type { DeskView, NextView } from '../../wire.ts';
import { AirModel } from './air.ts';
import { Asking } from './asking.ts';
import { BoardModel } from './board.ts';
import { NextModel } from './next.ts';
import { type NextPicture, ScenesModel } from './scenes.ts';
import type { Settings } from './settings.ts';

export type DialogName = 'load' | 'clear' | 'keys' | 'scenes';

/** What the desk knows of its connection. */
export interface LineSigns {
  state: ReadonlySignal<LineState>;
  /** Why the server does not let the page in; empty while it does. */
  refusal: ReadonlySignal<string>;
  /** How many calls wait for the connection. */
  waiting: ReadonlySignal<number>;
}

/** All that a desk shows and can do: one part for each area, around the newest view of the server. */
export class DeskModel {
  readonly #desk = signal<DeskView | null>(null);
  readonly #dialog = signal<DialogName | null>(null);

  readonly asking: Asking;
  readonly board: BoardModel;
  readonly next: NextModel;
  readonly air: AirModel;
  readonly scenes: ScenesModel;
  readonly settings: Settings;
  readonly line: LineSigns;

  constructor(calls: Calls, line: LineSigns, settings: Settings, nextPicture: NextPicture) {
    this.asking = new Asking(calls);
    this.board = new BoardModel(this.asking, this.#desk);
    this.next = new NextModel(this.asking, this.#desk);
    this.air = new AirModel(this.asking, this.#desk);
    this.scenes = new ScenesModel(this.asking, this.#desk, nextPicture);
    this.settings = settings;
    this.line = line;
  }

  get desk(): ReadonlySignal<DeskView | null> {
    return this.#desk;
  }

  get dialog(): ReadonlySignal<DialogName | null> {
    return this.#dialog;
  }

  takeDesk(view: DeskView): void {
    this.#desk.value = view;
    this.next.confirm();
  }

  takeNext(view: NextView): void {
    this.next.take(view);
  }

  open(dialog: DialogName): void {
    this.#dialog.value = dialog;
  }

  close(): void {
    this.#dialog.value = null;
    this.scenes.finish();
  }
}
