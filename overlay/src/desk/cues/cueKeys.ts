import type { CueStage } from '../../wire.ts';

/** What a key asks for while the cue list has the focus. */
export type CueKey =
  | { kind: 'step'; by: 1 | -1 }
  | { kind: 'move'; by: 1 | -1 }
  | { kind: 'turn'; stage: CueStage }
  | { kind: 'take' | 'edit' | 'remove' };

/** The part of a keyboard event that counts. */
export type CueKeyPress = Pick<KeyboardEvent, 'key' | 'altKey' | 'ctrlKey' | 'metaKey' | 'repeat'>;

const letters: Record<string, CueKey> = {
  s: { kind: 'turn', stage: 'standBy' },
  g: { kind: 'turn', stage: 'go' },
  k: { kind: 'turn', stage: 'done' },
  l: { kind: 'turn', stage: 'listed' },
  t: { kind: 'take' },
  e: { kind: 'edit' },
  delete: { kind: 'remove' },
  backspace: { kind: 'remove' },
};

/** What a key press asks for, or null where it is not the list's. */
export function cueKeyOf({ key, altKey, ctrlKey, metaKey, repeat }: CueKeyPress): CueKey | null {
  if (ctrlKey || metaKey) return null;
  if (key === 'ArrowDown' || key === 'ArrowUp')
    return { kind: altKey ? 'move' : 'step', by: key === 'ArrowDown' ? 1 : -1 };
  if (altKey || repeat) return null;
  return letters[key.toLowerCase()] ?? null;
}
