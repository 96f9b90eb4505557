import { type ReadonlySignal, signal } from '@preact/signals';
import type { AskLimits, AudienceDoor, CellCalls, DoorView, ViewersView } from '../../wire.ts';
import type { Asking } from './asking.ts';

/** Puts a text where it can be pasted from. */
export type Copy = (text: string) => Promise<void>;

const copiedWords = 'Copied: paste it where your viewers read it.';
const notCopiedWords = 'This browser let nothing be copied: the link stands in the terminal.';

/** What comes of viewers' asks, and how far they may go. */
export class ViewersModel {
  readonly #asking: Asking;
  readonly #view = signal<ViewersView | null>(null);
  readonly #door = signal<DoorView | null>(null);
  readonly #copied = signal<string | null>(null);
  readonly #showsCalls = signal(false);
  readonly #copy: Copy;

  constructor(asking: Asking, copy: Copy = (text) => navigator.clipboard.writeText(text)) {
    this.#asking = asking;
    this.#copy = copy;
  }

  /** Who may open the audience's page, and how many are there. */
  get door(): ReadonlySignal<DoorView | null> {
    return this.#door;
  }

  /** What came of copying the link, or null as long as nobody has. */
  get copied(): ReadonlySignal<string | null> {
    return this.#copied;
  }

  get view(): ReadonlySignal<ViewersView | null> {
    return this.#view;
  }

  /** Whether the desk's own board shows how many viewers name which cell. */
  get showsCalls(): ReadonlySignal<boolean> {
    return this.#showsCalls;
  }

  /** What the desk's board shows of calls. */
  get shownCalls(): readonly CellCalls[] {
    return this.#showsCalls.value ? (this.#view.value?.calls ?? []) : [];
  }

  take(view: ViewersView): void {
    this.#view.value = view;
  }

  takeDoor(view: DoorView): void {
    if (view.door !== this.#door.value?.door) this.#copied.value = null;
    this.#door.value = view;
  }

  setDoor(door: AudienceDoor): void {
    void this.#asking.ask('SetAudienceDoor', door);
  }

  /** Asks for the link of the audience's page, to be copied when it comes. */
  copyLink(): void {
    void this.#asking.ask('AudienceLink');
  }

  /** The link holds a key: it is copied, and neither kept nor shown. */
  async takeLink(link: string): Promise<void> {
    try {
      await this.#copy(link);
      this.#copied.value = copiedWords;
    } catch {
      this.#copied.value = notCopiedWords;
    }
  }

  showCalls(on: boolean): void {
    this.#showsCalls.value = on;
  }

  /** Changes a part of the limits and leaves the others. */
  limit(change: Partial<AskLimits>): void {
    const limits = this.#view.value?.limits;
    if (!limits) return;
    const { open, highest, quietOnAir } = { ...limits, ...change };
    void this.#asking.ask('LimitAsks', open, highest, quietOnAir);
  }

  setDelay(seconds: number): void {
    void this.#asking.ask('SetDelay', seconds);
  }

  useMeasuredDelay(): void {
    void this.#asking.ask('UseMeasuredDelay');
  }

  /** Shows a new code on the overlay, or takes the one that is there off it. */
  toggleCode(): void {
    void (this.#view.value?.code ? this.#asking.ask('HideDelayCode') : this.#asking.ask('ShowDelayCode'));
  }

  endShow(): void {
    void this.#asking.ask('EndShow');
  }
}
