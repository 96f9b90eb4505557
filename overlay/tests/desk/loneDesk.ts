import { signal } from '@preact/signals';
import type { Calls, DeskMethod } from '../../src/connection/deskCalls.ts';
import type { LineState } from '../../src/connection/line.ts';
import { DeskModel } from '../../src/desk/model/model.ts';
import { Settings } from '../../src/desk/model/settings.ts';
import type { Reply } from '../../src/wire.ts';
import { HandScreen } from '../screen/screenDoubles.ts';

/** Writes down every call as `Method argument argument`, and refuses the methods it was told to refuse. */
export class RecordingCalls implements Calls {
  readonly made: string[] = [];
  readonly refusals = new Map<DeskMethod, string>();

  call(method: DeskMethod, ...args: unknown[]): Promise<Reply> {
    this.made.push([method, ...args.map((arg) => JSON.stringify(arg))].join(' '));
    return Promise.resolve({ refusal: this.refusals.get(method) ?? null, sequence: 1 });
  }
}

/** A desk that stands alone. Pictures of the screen come when the test says so. */
export class LoneDesk {
  readonly calls = new RecordingCalls();
  readonly state = signal<LineState>('connected');
  readonly screen = new HandScreen();
  readonly model: DeskModel;
  #forPicture: (() => void)[] = [];

  constructor() {
    const line = { state: this.state, refusal: signal(''), waiting: signal(0) };
    this.model = new DeskModel(
      this.calls,
      line,
      new Settings(null),
      (run) => this.#forPicture.push(run),
      this.screen,
    );
  }

  get made(): string[] {
    return this.calls.made;
  }

  drawPicture(): void {
    const due = this.#forPicture;
    this.#forPicture = [];
    for (const run of due) run();
  }
}
