import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import type { CallOut, CueStage, CuesView, Grade, Reply } from '../../wire.ts';
import type { Asking } from './asking.ts';
import { type Draft, emptyDraft } from './draft.ts';

/** The cue list, and the call-out of it that is picked at this desk. */
export class CuesModel {
  readonly #asking: Asking;
  readonly #view = signal<CuesView | null>(null);
  readonly #pickedId = signal<number | null>(null);
  readonly #grade = signal<Grade>(2);
  readonly #draft = signal<Draft>(emptyDraft);

  readonly callOuts: ReadonlySignal<readonly CallOut[]> = computed(() => this.#view.value?.callOuts ?? []);

  readonly picked: ReadonlySignal<CallOut | null> = computed(
    () => this.callOuts.value.find(({ id }) => id === this.#pickedId.value) ?? null,
  );

  /** What is called out to the presenter: the first that goes, or else the first that stands by. */
  readonly called: ReadonlySignal<CallOut | null> = computed(
    () => this.#firstAt('go') ?? this.#firstAt('standBy') ?? null,
  );

  /** How many more go or stand by. */
  readonly alsoCalled: ReadonlySignal<number> = computed(() => {
    const all = this.callOuts.value.filter(({ stage }) => stage === 'go' || stage === 'standBy').length;
    return Math.max(0, all - 1);
  });

  constructor(asking: Asking) {
    this.#asking = asking;
  }

  /** The grade at which the next deduction is put on the list. */
  get grade(): ReadonlySignal<Grade> {
    return this.#grade;
  }

  /** The talking point that is being written. */
  get draft(): ReadonlySignal<Draft> {
    return this.#draft;
  }

  take(view: CuesView): void {
    const place = this.callOuts.value.findIndex(({ id }) => id === this.#pickedId.value);
    batch(() => {
      this.#view.value = view;
      // What took the place of a call-out that is gone is picked: keys go on working.
      if (place >= 0 && this.picked.value === null)
        this.#pickedId.value = view.callOuts[Math.min(place, view.callOuts.length - 1)]?.id ?? null;
    });
  }

  pick(id: number): void {
    this.#pickedId.value = id;
  }

  step(by: 1 | -1): void {
    const all = this.callOuts.value;
    const at = all.findIndex(({ id }) => id === this.#pickedId.value);
    const next = all[at === -1 ? (by === 1 ? 0 : all.length - 1) : at + by];
    if (next) this.pick(next.id);
  }

  chooseGrade(grade: Grade): void {
    this.#grade.value = grade;
  }

  /** Puts a deduction on the list at the grade that is chosen. */
  cue(deduction: string): void {
    void this.#asking.ask('CueDeduction', deduction, this.#grade.value);
  }

  write(text: string): void {
    this.#draft.value = { ...this.#draft.value, text };
  }

  /** Takes the words of a talking point into the field where they are written. Nothing is done about a deduction. */
  edit(callOut: CallOut): void {
    const { id, version, text, deduction } = callOut;
    if (deduction === null) this.#draft.value = { text, changes: { id, version } };
  }

  dropDraft(): void {
    this.#draft.value = emptyDraft;
  }

  /** What was written stays in its field until it was taken. */
  async submit(): Promise<void> {
    const sent = this.#draft.value;
    const { text, changes } = sent;
    const reply = await (changes
      ? this.#asking.ask('RewordCue', changes.id, changes.version, text)
      : this.#asking.ask('CueText', text));
    if (reply.refusal === null && this.#draft.value === sent) this.dropDraft();
  }

  regrade({ id, version }: CallOut, grade: Grade): void {
    void this.#asking.ask('RegradeCue', id, version, grade);
  }

  /** One place up or down: said as the neighbour that it comes behind. */
  move({ id }: CallOut, by: 1 | -1): void {
    const all = this.callOuts.value;
    const at = all.findIndex((each) => each.id === id);
    if (at + by < 0 || at + by >= all.length) return;
    const after = by === 1 ? all[at + 1]?.id : all[at - 2]?.id;
    void this.#asking.ask('MoveCue', id, after ?? null);
  }

  turn({ id, version }: CallOut, stage: CueStage): Promise<Reply> {
    return this.#asking.ask('TurnCue', id, version, stage);
  }

  takeOnAir({ id, version }: CallOut): void {
    void this.#asking.ask('TakeCue', id, version);
  }

  remove({ id, version }: CallOut): void {
    void this.#asking.ask('RemoveCue', id, version);
  }

  sweep(): void {
    void this.#asking.ask('SweepCues');
  }

  #firstAt(stage: CueStage): CallOut | undefined {
    return this.callOuts.value.find((each) => each.stage === stage);
  }
}
