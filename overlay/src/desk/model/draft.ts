/** A talking point that is being written at this desk: a new one, or new words for one of the list. */
export interface Draft {
  text: string;
  /** Which call-out is changed, in the version that was seen; null for a new one. */
  changes: { id: number; version: number } | null;
}

export const emptyDraft: Draft = { text: '', changes: null };
