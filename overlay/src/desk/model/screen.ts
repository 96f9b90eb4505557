import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { cellNamed } from '../../grid/cells.ts';
import type { Beat } from '../../screen/beat.ts';
import type { Capture, OpenCapture } from '../../screen/capture.ts';
import {
  boxOf,
  type Corners,
  cellBox,
  firstCorners,
  inSent,
  longestCrop,
  moved,
  sentSize,
} from '../../screen/corners.ts';
import { Pacer } from '../../screen/pacer.ts';
import type { ScreenPost } from '../../screen/post.ts';
import { firstPicture, searchGrid } from '../../screen/search.ts';
import { Sending } from '../../screen/sending.ts';
import { Slowness } from '../../screen/slowness.ts';
import type { DeskView } from '../../wire.ts';
import type { HeldReading, ScreenView } from '../../wireScreen.ts';
import type { Asking } from './asking.ts';

/** `off` at first and at the end, `lost` where the browser ended it. */
export type ScreenPhase = 'off' | 'choosing' | 'placing' | 'following' | 'lost';

/** What following the screen needs of the browser; tests bring their own. */
export interface ScreenParts {
  /** Why this page cannot be shown a screen; null where it can. */
  whyNot: string | null;
  open: OpenCapture;
  post: ScreenPost;
  beat: Beat;
  now: () => number;
  /** A word by which the server knows this page. */
  page: string;
}

/** How long after an entry the screen is compared with the board, in milliseconds: the next one may follow at once. */
const comparePause = 400;

/** How often the grid is looked for anew where it is lost, in milliseconds. */
const searchPause = 2000;

/** Follows the grid on the presenter's screen: pictures of it go to the server, which enters what has changed. */
export class ScreenModel {
  readonly #asking: Asking;
  readonly #parts: ScreenParts;
  readonly #phase = signal<ScreenPhase>('off');
  readonly #corners = signal<Corners | null>(null);
  readonly #isFound = signal<boolean | null>(null);
  readonly #withMarks = signal(true);
  readonly #view = signal<ScreenView | null>(null);
  readonly #problem = signal('');
  readonly #isReached = signal(true);
  readonly #wasSlow = signal(false);
  #capture: Capture | null = null;
  #pacer = new Pacer();
  #endBeat: () => void = () => {};
  readonly #sending = new Sending();
  #searchedAt = 0;
  #board = '';

  readonly mayFollow: ReadonlySignal<boolean>;
  /** The reading that the presenter is asked about. */
  readonly held: ReadonlySignal<HeldReading | null>;
  /** Whether another puzzle is on the screen, which can be loaded. */
  readonly hasOtherPuzzle: ReadonlySignal<boolean>;
  /** Cells in which the screen can be taken over; none while a reading waits, which comes first. */
  readonly apart: ReadonlySignal<readonly string[]>;

  constructor(asking: Asking, desk: ReadonlySignal<DeskView | null>, parts: ScreenParts) {
    this.#asking = asking;
    this.#parts = parts;
    this.mayFollow = computed(() => desk.value?.role === 'presenter');
    this.held = computed(() => this.#view.value?.held[0] ?? null);
    this.hasOtherPuzzle = computed(() => this.#view.value?.status === 'otherPuzzle');
    this.apart = computed(() => (this.held.value ? [] : (this.#view.value?.apart ?? [])));
  }

  get phase(): ReadonlySignal<ScreenPhase> {
    return this.#phase;
  }

  get corners(): ReadonlySignal<Corners | null> {
    return this.#corners;
  }

  /** Whether the server has found the grid; null while it looks for it. */
  get isFound(): ReadonlySignal<boolean | null> {
    return this.#isFound;
  }

  get withMarks(): ReadonlySignal<boolean> {
    return this.#withMarks;
  }

  get view(): ReadonlySignal<ScreenView | null> {
    return this.#view;
  }

  /** Why it cannot begin or had to end, in one plain sentence; empty where it did not. */
  get problem(): ReadonlySignal<string> {
    return this.#problem;
  }

  /** Whether the server answered the last picture. */
  get isReached(): ReadonlySignal<boolean> {
    return this.#isReached;
  }

  /** Whether the browser has held this page back since following began. */
  get wasSlow(): ReadonlySignal<boolean> {
    return this.#wasSlow;
  }

  get whyNot(): string | null {
    return this.#parts.whyNot;
  }

  /** What is shown, to look at; null while nothing is. */
  get capture(): Capture | null {
    return this.#capture;
  }

  /** Asks the browser for a screen, which asks the presenter; then looks for the grid. */
  async choose(): Promise<void> {
    if (!this.mayFollow.value || this.whyNot !== null) return;
    this.#end('choosing');
    try {
      const capture = await this.#parts.open(() => this.#lose(capture));
      if (this.#phase.value !== 'choosing') return capture.stop();
      this.#capture = capture;
      this.#phase.value = 'placing';
      await this.find();
    } catch {
      this.#end(
        'off',
        'The browser showed no screen: choose one, or allow the browser to record the screen.',
      );
    }
  }

  /** Looks for the grid in the whole picture. */
  async find(): Promise<void> {
    const capture = this.#capture;
    if (!capture) return;
    this.#isFound.value = null;
    const isWanted = () => this.#capture === capture;
    if (!(await firstPicture(capture, this.#parts.beat, isWanted))) return;
    const corners = await searchGrid(capture, this.#parts.post);
    if (!isWanted()) return;
    this.#isFound.value = corners !== null;
    this.#corners.value = corners ?? this.#corners.value ?? firstCorners(capture.size);
  }

  moveCorner(index: number, right: number, down: number): void {
    const corners = this.#corners.value;
    if (corners && this.#capture)
      this.#corners.value = moved(corners, index, right, down, this.#capture.size);
  }

  /** Follows marks too, or digits alone; while following it begins anew with that. */
  followMarks(withMarks: boolean): void {
    this.#withMarks.value = withMarks;
    if (this.#phase.value === 'following') void this.follow();
  }

  /** Follows the grid between the corners. */
  async follow(): Promise<void> {
    if (!this.#capture || !this.#corners.value) return;
    const reply = await this.#asking.ask('FollowScreen', this.#parts.page, this.#withMarks.value);
    if (reply.refusal !== null || !this.#capture) return;
    this.#pacer = new Pacer();
    this.#view.value = null;
    this.#sending.forget();
    this.#phase.value = 'following';
    this.#endBeat();
    this.#wasSlow.value = false;
    const slowness = new Slowness();
    this.#endBeat = this.#parts.beat(() => {
      if (slowness.beat(this.#parts.now())) this.#wasSlow.value = true;
      void this.look();
    });
  }

  /** Back to the corners. */
  placeAgain(): void {
    if (this.#phase.value !== 'following') return;
    this.#stopLooking();
    this.#phase.value = 'placing';
  }

  stop(): void {
    if (this.#phase.value !== 'off') this.#end('off');
  }

  /** Sends the grid if it is time to. */
  async look(): Promise<void> {
    const [capture, corners, pacer] = [this.#capture, this.#corners.value, this.#pacer];
    if (this.#phase.value !== 'following' || !capture?.isReady || !corners) return;
    const box = boxOf(corners, capture.size);
    if (!pacer.take(this.#parts.now(), capture.fingerprint(box))) return;
    const size = sentSize(box, longestCrop);
    const crop = capture.take(box, size);
    const sent = await this.#sending.pack(crop, inSent(corners, box, size));
    const posted = sent ? await this.#parts.post.look(this.#parts.page, sent) : ({ kind: 'later' } as const);
    if (this.#pacer !== pacer || this.#phase.value !== 'following') return;
    this.#isReached.value = posted.kind !== 'later';
    this.#sending.forget();
    if (posted.kind === 'whole') pacer.failed(this.#parts.now(), 0);
    else if (posted.kind === 'later') pacer.failed(this.#parts.now());
    else if (posted.kind === 'refused') this.#end('off', posted.sentence);
    else {
      if (sent) this.#sending.arrived(crop, sent);
      this.#view.value = posted.answer;
      pacer.answered(this.#parts.now(), posted.answer.again);
      if (posted.answer.status === 'gridNotFound') await this.#findAgain(capture, pacer);
    }
  }

  /** Says what stands in the cell that is held back: the digit, 0 for nothing, null for what was read. */
  answer(digit: number | null): void {
    const held = this.held.value;
    if (!held) return;
    const asked =
      digit === null
        ? this.#asking.ask('AcceptReading', held.cell)
        : this.#asking.ask('ReadAs', held.cell, digit);
    void asked.then(() => this.#hurry());
  }

  /** Loads the other puzzle that is on the screen. */
  load(): void {
    void this.#asking.ask('LoadFromScreen').then(() => this.#hurry());
  }

  /** Takes over what is on the screen where it differs from the session. */
  takeScreen(): void {
    void this.#asking.ask('TakeScreen').then(() => this.#hurry());
  }

  /** The board was pushed: where something was entered by hand, the screen is to be compared with it. */
  compare({ cells }: DeskView): void {
    const board = JSON.stringify(cells.map(({ candidates: _, ...written }) => written));
    if (board === this.#board) return;
    this.#board = board;
    this.#pacer.hurry(this.#parts.now() + comparePause);
  }

  /** Draws a cell as it was sent last. */
  drawCell(canvas: HTMLCanvasElement, name: string): void {
    const cell = cellNamed(name);
    const { last } = this.#sending;
    if (last && cell !== null) last.crop.drawOn(canvas, cellBox(cell, last.corners));
  }

  #hurry(): void {
    this.#pacer.hurry(this.#parts.now());
  }

  // The window has moved, or the page in it was scrolled.
  async #findAgain(capture: Capture, pacer: Pacer): Promise<void> {
    const now = this.#parts.now();
    if (now - this.#searchedAt < searchPause) {
      pacer.answered(now, searchPause);
      return;
    }
    this.#searchedAt = now;
    const corners = await searchGrid(capture, this.#parts.post);
    if (this.#pacer !== pacer) return;
    if (corners) this.#corners.value = corners;
    pacer.answered(this.#parts.now(), searchPause);
  }

  #lose(capture: Capture): void {
    if (this.#capture === capture) this.#end('lost');
  }

  #stopLooking(): void {
    this.#endBeat();
    this.#endBeat = () => {};
    if (this.#phase.value === 'following') void this.#asking.askQuietly('StopFollowing', this.#parts.page);
    this.#view.value = null;
    this.#sending.forget();
  }

  #end(phase: ScreenPhase, problem = ''): void {
    this.#stopLooking();
    this.#capture?.stop();
    this.#capture = null;
    this.#corners.value = null;
    this.#isFound.value = null;
    this.#isReached.value = true;
    this.#problem.value = problem;
    this.#phase.value = phase;
  }
}
