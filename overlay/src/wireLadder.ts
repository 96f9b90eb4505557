/** The ladder as it crosses the wire. */

export interface Rung {
  rule: string;
  name: string;
  family: string;
  /** Whether it is looked for. */
  isOn: boolean;
}

export interface Family {
  name: string;
  isOn: boolean;
  /** Whether any of its rules rests on the puzzle having a single solution. */
  assumesOneSolution: boolean;
}

export interface LadderView {
  sequence: number;
  /** The last rule that is looked for; null for the whole ladder. */
  last: string | null;
  /** All of them, easiest first. */
  rungs: Rung[];
  families: Family[];
}
