/** What crosses the wire between the server and a viewer's page. */

import type { AskLimits, AudienceDoor, CellName, Credit, Grade } from './wire.ts';
import type { Picture } from './wirePicture.ts';

/** The board as the presenter wrote it. */
export interface AudienceBoard {
  /** 81 characters, row by row: a digit or `.` */
  givens: string;
  placed: string;
  /** As in `r1c1:248 r4c7:13`. */
  lists: string;
  blockMarks: string;
  struck: string;
}

/** The board of some time ago, and how far viewers may ask now. */
export interface AudienceView {
  sequence: number;
  door: AudienceDoor;
  delaySeconds: number;
  asks: AskLimits;
  /** Whether nothing is answered now, as something is on air. */
  isQuiet: boolean;
  credit: Credit | null;
  /** Null until there is one that viewers have seen. */
  board: AudienceBoard | null;
}

export interface AudienceAnswer {
  kind: 'nothing' | 'hint' | 'reason' | 'counted' | 'notice';
  /** In paragraphs. */
  words: string[];
  /** Of a hint. */
  grade: Grade | null;
  picture: Picture | null;
}

/** What the server calls on a viewer's page. */
export interface AudiencePushes {
  Board: (view: AudienceView) => void;
}

/** What a viewer's page may ask for at `/hubs/audience`. The answer is for it alone. */
export interface AudienceMethods {
  /** About a cell or the whole board; of a grade, or the one after the last. */
  Hint: (cell: CellName | null, grade: Grade | null) => AudienceAnswer;
  /** Why the digit that stands there follows. */
  Why: (cell: CellName) => AudienceAnswer;
  /** "I have found it", with the digit or without. */
  Call: (cell: CellName, digit: number | null) => AudienceAnswer;
}
