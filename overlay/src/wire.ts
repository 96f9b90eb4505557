/** The types that cross the wire, both ways. The server's own types are the C# records of the same names. */

import type { Picture } from './wirePicture.ts';
import type { FeaturedRule } from './wirePlan.ts';
import type { EntryProof } from './wireProofs.ts';
import type { Recording } from './wireShows.ts';

/** `r4c7` */
export type CellName = string;

export interface CandidateName {
  cell: CellName;
  /** 1 to 9 */
  digit: number;
}

/** Where the board lies in the picture of a scene, as fractions of the overlay's width and height. */
export interface Frame {
  left: number;
  top: number;
  width: number;
  height: number;
}

export interface Credit {
  title: string;
  setter: string;
  link: string;
}

/** What is on air is read by everybody who sees the stage: nothing computed stands here. */
export interface StageCell {
  digit: number | null;
  isGiven: boolean;
  cellMark: number[] | null;
  blockMarks: number[];
  struck: number[];
}

export interface DeskCell extends StageCell {
  /** Candidates of the known board. */
  candidates: number[];
}

export type WatchKind =
  | 'houseBroken'
  | 'wrongDigit'
  | 'wrongStrike'
  | 'staleMark'
  | 'featuredOpen'
  | 'freeDigit'
  | 'easierOpen'
  | 'airOutdated'
  | 'featuredNear'
  | 'featuredPassed';

export interface WatchNote {
  kind: WatchKind;
  text: string;
  cells: CellName[];
  /** ISO 8601, or null. */
  since: string | null;
  /** How many entries ago it began. */
  entries: number;
}

export interface OpenDeduction {
  id: string;
  rule: string;
  name: string;
  short: string;
  sentence: string;
  seconds: number;
  cells: { cell: CellName; role: string }[];
  digits: number[];
  places: CandidateName[];
  removes: CandidateName[];
  unseen: CandidateName[];
  first: string | null;
  firstName: string | null;
  since: number;
  /** Whether it rests on the puzzle having a single solution. */
  assumesOneSolution: boolean;
}

/** 1 where, 2 what, 3 which, 4 why. */
export type Grade = 1 | 2 | 3 | 4;

export interface Cue {
  deduction: OpenDeduction;
  grade: Grade;
  hints: { where: string; what: string; which: string; why: string };
  /** What stands by: the whole deduction, for the preview on the desk. On air: what viewers see, at its grade. */
  picture: Picture;
}

/** The cells that viewers call, as they stand by or are on air. */
export interface Called {
  /** How many cells they are. */
  cells: number;
  picture: Picture;
}

export interface Scene {
  name: string;
  frame: Frame;
}

export interface ChatStatus {
  phase: 'connecting' | 'connected' | 'stopped';
  /** The same in one plain sentence. */
  text: string;
}

export interface DeskView {
  sequence: number;
  role: 'presenter' | 'coHost';
  credit: Credit;
  cells: DeskCell[];
  writing: CellName[];
  undo: string | null;
  redo: string | null;
  watch: WatchNote[];
  proof: EntryProof | null;
  standby: Cue | null;
  onAir: Cue | null;
  /** What stands by or is on air instead of a deduction. */
  calledStandby: Called | null;
  calledOnAir: Called | null;
  coHostMayAir: boolean;
  scenes: Scene[];
  shownFrame: string | null;
  featured: FeaturedRule[];
  /** Null where there is no chat. */
  chat: ChatStatus | null;
  /** Empty where the presenter gave none. */
  showTitle: string;
  /** The show was ended: the next puzzle begins another one. */
  isOver: boolean;
  recording: Recording;
  /** The state that open deductions must be of, or of a later one, to belong to this board. */
  scanOf: number;
}

export interface NextView {
  sequence: number;
  blocked: string | null;
  /** Whether slower rules are still being looked at. */
  goesOn: boolean;
  deductions: OpenDeduction[];
}

export type CueStage = 'listed' | 'standBy' | 'go' | 'done';

/** The deduction of a call-out. */
export interface CuedDeduction {
  id: string;
  name: string;
  short: string;
  grade: Grade;
  cells: CellName[];
  /** Why it is not open any more, as in "has been passed"; null while it is open. */
  passed: string | null;
}

/** One item of the cue list. A change names the version that was seen. */
export interface CallOut {
  id: number;
  version: number;
  stage: CueStage;
  text: string;
  seconds: number;
  /** Null for a talking point. */
  deduction: CuedDeduction | null;
}

export interface CuesView {
  sequence: number;
  callOuts: CallOut[];
}

/** How far the presenter lets viewers go who ask. */
export interface AskLimits {
  open: boolean;
  highest: Grade;
  quietOnAir: boolean;
}

/** Who may open the audience's page. */
export type AudienceDoor = 'closed' | 'byLink' | 'open';

/** How far viewers are behind the presenter, in seconds. */
export interface Delay {
  /** What answers go by, 0 to 60. */
  seconds: number;
  least: number;
  most: number;
}

/** What viewers say to have found of one cell. Never on air. */
export interface CellCalls {
  cell: CellName;
  viewers: number;
  /** How many of them say which digit it is. */
  named: number;
  right: number;
  /** Null until the digit is placed, or where nobody was right. */
  standing: 'first' | 'close' | 'after' | null;
  /** By how many seconds the first right call came before the entry. */
  earlier: number | null;
}

/** What comes of viewers' asks: numbers and cells, never who. */
export interface ViewersView {
  /** Of the last state shown; several views may have the same. */
  sequence: number;
  limits: AskLimits;
  delay: Delay;
  code: string | null;
  measured: Delay | null;
  measuredViewers: number;
  answers: number;
  calls: CellCalls[];
}

/** Who may open the audience's page, and how many are there. */
export interface DoorView {
  sequence: number;
  door: AudienceDoor;
  present: number;
  most: number;
  /** Without a key: it may be seen by anybody. */
  address: string;
  /** Whether that is an address for other machines. */
  isForOthers: boolean;
}

export interface OverlayView {
  sequence: number;
  frame: Frame;
  showsFrame: boolean;
  grade: Grade | null;
  picture: Picture | null;
  /** By which viewers let the delay be measured. */
  code: string | null;
}

export interface StageView {
  sequence: number;
  credit: Credit;
  cells: StageCell[];
  grade: Grade | null;
  picture: Picture | null;
  code: string | null;
}

/** The answer to everything that a page asks for. */
export interface Reply {
  /** In one plain sentence, or null where it was done. */
  refusal: string | null;
  /** The number of the state after it. */
  sequence: number;
}
