/** Proofs as they cross the wire. */

/** One step of a proof in words. */
export interface ProofStep {
  name: string;
  short: string;
  sentence: string;
}

export type ProofKind = 'pending' | 'proved' | 'notProved' | 'wrong' | 'unsound';

/** How the last entry that says something new follows. */
export interface EntryProof {
  /** In a few words, as beside undo. */
  entry: string;
  kind: ProofKind;
  /** Goes on from the entry's words. */
  text: string;
  steps: ProofStep[];
}

/** Why a digit is, or cannot be, in a cell. It may tell the solution: only the presenter's page that asked is sent it. */
export interface WhyView {
  cell: string;
  digit: number;
  text: string;
  steps: ProofStep[];
}
