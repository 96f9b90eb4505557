/** What the server answers to pictures of the presenter's screen. */

import type { CellName } from './wire.ts';

export type FollowStatus = 'following' | 'gridNotFound' | 'unsure' | 'otherPuzzle';

/** A reading that is held back. */
export interface HeldReading {
  cell: CellName;
  text: string;
}

export interface ScreenView {
  status: FollowStatus;
  /** After how many milliseconds to send the grid again even if it has not changed; null for not at all. */
  again: number | null;
  held: HeldReading[];
  /** How many digits another puzzle on the screen has; null where it is the session's. */
  otherGivens: number | null;
  /** Cells in which screen and session have differed for a while. */
  apart: CellName[];
  refusal: string | null;
}

export interface FoundGrid {
  /** Clockwise from the upper left, x and y of each in pixels; null where no grid was found. */
  corners: number[] | null;
}
