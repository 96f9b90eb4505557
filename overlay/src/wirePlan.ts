/** What is planned for a puzzle, as it crosses the wire. */

/** A rule that the puzzle is to show. */
export interface FeaturedRule {
  rule: string;
  /** Wanted as soon as it is open, and not as late as it can be. */
  isEarly: boolean;
}

/** A change of one cell; null for an empty one. */
export interface Correction {
  cell: string;
  from: number | null;
  to: number | null;
}

export interface RuleUse {
  rule: string;
  name: string;
  cost: number;
  rounds: number;
}

/** Whether the puzzle needs a featured rule. */
export interface RuleNeed {
  rule: string;
  name: string;
  need: 'spare' | 'needed' | 'late' | 'never';
  board: string | null;
  instead: string[];
}

export interface GradeFigures {
  word: string;
  work: number | null;
  rounds: number;
  gates: number;
}

export interface VetResult {
  /** 81 characters where it is a grid. */
  puzzle: string;
  /** 2 for more than one. */
  solutions: number;
  clues: number;
  redundant: string[] | null;
  symmetries: string[];
  hardest: string | null;
  grade: GradeFigures | null;
  rules: RuleUse[];
  featured: RuleNeed[];
  /** Where there is not one solution: likeliest first. */
  corrections: Correction[];
  faults: string[];
  /** All of it in words. */
  sentences: string[];
}

/** What vetting a grid found out: only the presenter's page that asked is sent it. */
export interface VettedView {
  /** As it was typed. */
  grid: string;
  result: VetResult;
}

/** Seconds are of speaking. Of the way ahead, numbers and times go on from what was done. */
export interface PassageLine {
  title: string;
  /** Numbers of steps, from 1 on. */
  first: number;
  last: number;
  at: number;
  seconds: number;
}

interface Candidate {
  cell: string;
  digit: number;
}

export interface StepLine {
  number: number;
  at: number;
  seconds: number;
  rule: string;
  name: string;
  places: Candidate[];
  removes: Candidate[];
  /** There is no other way on without a harder rule. */
  isGate: boolean;
  isFeatured: boolean;
  short: string;
  text: string;
}

/** Another deduction of a featured rule, and the steps before which it is open. */
export interface OtherLine {
  cells: string[];
  places: Candidate[];
  removes: Candidate[];
  fromStep: number;
  toStep: number;
}

export interface FeaturedLine {
  rule: string;
  name: string;
  /** Null where it is open nowhere on the way. */
  step: number | null;
  others: OtherLine[];
}

/** What is worth saying. */
export interface PointLine {
  /** Null where it is about the whole way. */
  step: number | null;
  /** One in how many puzzles it is true; null for what can be said of every way. */
  oneIn: number | null;
  text: string;
  facts: PointFacts;
}

/** What a remark rests on; empty or null is what its kind has not. */
export interface PointFacts {
  kind: string;
  cells: string[];
  digits: number[];
  houses: string[];
  rule: string | null;
  count: number | null;
  outOf: number | null;
}

export interface RunSheet {
  grid: string;
  isComplete: boolean;
  /** Of the way ahead alone. */
  seconds: number;
  passages: PassageLine[];
  steps: StepLine[];
  featured: FeaturedLine[];
  /** The rarest first. */
  talkingPoints: PointLine[];
}

export interface RunSheetView {
  sequence: number;
  /** The state whose board the way goes on from; older while another plan is on its way. */
  plannedOf: number;
  blocked: string | null;
  /** Null where there is none, or none of this puzzle yet. */
  sheet: RunSheet | null;
  /** One for each step, empty where nothing is noted. */
  notes: string[];
  /** The oldest first. */
  done: DoneLine[];
  /** Their step is neither on the sheet nor done. */
  kept: StepNote[];
}

/** A step that was done on this puzzle; an entry that follows in several steps has done as many. */
export interface DoneLine {
  first: number;
  last: number;
  /** Seconds of speaking from the start of the puzzle. */
  begins: number;
  /** 0 while it is not known how it follows. */
  seconds: number;
  text: string;
  /** ISO 8601; null where that was not kept. */
  at: string | null;
  /** Goes on from the text; empty while that is not known. */
  how: string;
  notes: string[];
}

export interface StepNote {
  places: Candidate[];
  removes: Candidate[];
  text: string;
}
