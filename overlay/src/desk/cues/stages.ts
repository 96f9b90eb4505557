import type { CueStage } from '../../wire.ts';

/** The stages with their names, and the key that brings a cue there from within the list. */
export const stages: Record<CueStage, { name: string; key: string }> = {
  listed: { name: 'Listed', key: 'L' },
  standBy: { name: 'Stand by', key: 'S' },
  go: { name: 'Go', key: 'G' },
  done: { name: 'Done', key: 'K' },
};
