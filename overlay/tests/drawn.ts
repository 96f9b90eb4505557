import type { CallOut, DeskCell, DeskView, Frame, OpenDeduction, StageCell } from '../src/wire.ts';
import type { Picture, Shape } from '../src/wirePicture.ts';

/** A stage cell: open and blank unless something is said of it. */
export function stageCell(said: Partial<StageCell> = {}): StageCell {
  return { digit: null, isGiven: false, cellMark: null, blockMarks: [], struck: [], ...said };
}

/**
 * Cells of a board drawn as nine lines: digits are given, a full stop is an open cell. Blanks are for the eye.
 */
export function cellsOf(drawing: string): DeskCell[] {
  const characters = drawing.replace(/\s/g, '');
  if (characters.length !== 81) throw new Error(`Drawn are ${characters.length} cells.`);
  return [...characters].map((character) => ({
    ...stageCell(character === '.' ? {} : { digit: Number(character), isGiven: true }),
    candidates: [],
  }));
}

/** Our own drawing: enough to stand on, not a puzzle. */
export const sketch = `
  1 . .  . . .  . . .
  . . .  . 2 .  . . .
  . . .  . . .  . . .
  . . .  . . .  . . .
  . . .  . . .  . . .
  . . .  . . .  . . .
  . . .  . . .  . . .
  . . .  . . .  . . .
  . . .  . . .  . . 9`;

export function deskView(said: Partial<DeskView> = {}): DeskView {
  return {
    sequence: 1,
    role: 'presenter',
    credit: { title: 'Sketch', setter: 'Ourselves', link: '' },
    cells: cellsOf(sketch),
    writing: [],
    undo: null,
    redo: null,
    watch: [],
    proof: null,
    standby: null,
    onAir: null,
    calledStandby: null,
    calledOnAir: null,
    coHostMayAir: false,
    scenes: [],
    shownFrame: null,
    featured: [],
    chat: null,
    showTitle: '',
    isOver: false,
    recording: { phase: 'none', seconds: 0, since: null },
    scanOf: 1,
    ...said,
  };
}

export function deduction(id: string, said: Partial<OpenDeduction> = {}): OpenDeduction {
  return {
    id,
    rule: 'naked-single',
    name: 'naked single',
    short: id,
    sentence: `Said of ${id}.`,
    seconds: 4,
    cells: [],
    digits: [],
    places: [],
    removes: [],
    unseen: [],
    first: null,
    firstName: null,
    since: 0,
    assumesOneSolution: false,
    ...said,
  };
}

/** A talking point, or a deduction where one is said. */
export function callOut(id: number, said: Partial<CallOut> = {}): CallOut {
  return { id, version: 1, stage: 'listed', text: `Point ${id}`, seconds: 4, deduction: null, ...said };
}

/** A call-out of an open deduction at grade 2. */
export function cuedWing(id: number, said: Partial<CallOut> = {}, passed: string | null = null): CallOut {
  const wing = {
    id: `wing ${id}`,
    name: 'XY-wing',
    short: 'wing',
    grade: 2 as const,
    cells: ['r4c2'],
    passed,
  };
  return callOut(id, { text: 'Look for an XY-wing', deduction: wing, ...said });
}

export const frame: Frame = { left: 0.25, top: 0.1, width: 0.45, height: 0.8 };

export function picture(caption: string, ...shapes: Shape[]): Picture {
  return { caption, shapes };
}
