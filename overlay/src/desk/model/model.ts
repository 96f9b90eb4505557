import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Calls } from '../../connection/deskCalls.ts';
import type { LineState } from '../../connection/line.ts';
import type { CuesView, DeskView, NextView, ViewersView } from '../../wire.ts';
import { AirModel } from './air.ts';
import { Asking } from './asking.ts';
import { BoardModel } from './board.ts';
import { CuesModel } from './cues.ts';
import { ForecastModel } from './forecast.ts';
import { LadderModel } from './ladder.ts';
import { NextModel } from './next.ts';
import { PlanModel } from './plan.ts';
import { type NextPicture, ScenesModel } from './scenes.ts';
import { ScreenModel, type ScreenParts } from './screen.ts';
import type { Settings } from './settings.ts';
import { ShowsModel } from './shows.ts';
import { VetModel } from './vet.ts';
import { ViewersModel } from './viewers.ts';
import { WhyModel } from './why.ts';

export type DialogName =
  | 'load'
  | 'clear'
  | 'keys'
  | 'scenes'
  | 'viewers'
  | 'ladder'
  | 'why'
  | 'shows'
  | 'screen';

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
  readonly forecast: ForecastModel;
  readonly air: AirModel;
  readonly cues: CuesModel;
  readonly scenes: ScenesModel;
  readonly viewers: ViewersModel;
  readonly ladder: LadderModel;
  readonly plan: PlanModel;
  readonly vet: VetModel;
  readonly why: WhyModel;
  readonly shows: ShowsModel;
  readonly screen: ScreenModel;
  readonly settings: Settings;
  readonly line: LineSigns;

  constructor(
    calls: Calls,
    line: LineSigns,
    settings: Settings,
    nextPicture: NextPicture,
    screen: ScreenParts,
  ) {
    this.asking = new Asking(calls);
    this.next = new NextModel(this.asking, this.#desk);
    this.forecast = new ForecastModel(this.#desk);
    // A co-host sees on the board where the deduction is that they look at; the presenter sees its picture.
    const lookedAt = computed(() => {
      if (this.forecast.watched.value !== null) return this.forecast.watchedCells.value;
      const chosen = this.#desk.value?.role === 'coHost' ? this.next.deduction.value : null;
      return chosen?.cells.map(({ cell }) => cell) ?? [];
    });
    this.board = new BoardModel(this.asking, this.#desk, lookedAt);
    this.cues = new CuesModel(this.asking);
    this.air = new AirModel(this.asking, this.#desk);
    this.scenes = new ScenesModel(this.asking, this.#desk, nextPicture);
    this.viewers = new ViewersModel(this.asking);
    this.ladder = new LadderModel(this.asking, this.#desk);
    this.plan = new PlanModel(this.asking, this.#desk);
    this.vet = new VetModel(this.asking);
    this.why = new WhyModel(this.asking, this.#desk);
    this.shows = new ShowsModel(this.asking, this.#desk);
    this.screen = new ScreenModel(this.asking, this.#desk, screen);
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
    this.screen.compare(view);
  }

  takeNext(view: NextView): void {
    this.next.take(view);
  }

  takeCues(view: CuesView): void {
    this.cues.take(view);
  }

  takeViewers(view: ViewersView): void {
    this.viewers.take(view);
  }

  open(dialog: DialogName): void {
    this.#dialog.value = dialog;
  }

  /** Asks about the cell at the cursor; only the presenter may, since the answer can tell the solution. */
  askWhy(): void {
    if (!this.board.mayEnter.value) return;
    this.why.begin(this.board.selection.value.cursor);
    this.open('why');
  }

  /** The kept shows; they are for the presenter alone. */
  openShows(): void {
    if (!this.board.mayEnter.value) return;
    this.shows.list();
    this.open('shows');
  }

  /** Opens the run sheet where it is closed, and has the focus go there. */
  goToRunSheet(): void {
    this.settings.showRunSheet(true);
    this.plan.goThere();
  }

  close(): void {
    this.#dialog.value = null;
    this.scenes.finish();
  }
}
