import type { Way } from '../model/board.ts';

/** A key with what it does, as the list of keys shows it. */
export interface KeyEntry {
  keys: string;
  words: string;
}

export const wayKeys: Record<string, Way> = { d: 'digit', b: 'blockMark', c: 'cellMark', x: 'strike' };

/** The ways of entry with their labels, in the order of the desk. */
export const ways: readonly { way: Way; label: string; key: string }[] = [
  { way: 'digit', label: 'Digit', key: 'D' },
  { way: 'blockMark', label: 'Block mark', key: 'B' },
  { way: 'cellMark', label: 'Cell mark', key: 'C' },
  { way: 'strike', label: 'Strike', key: 'X' },
];

export const boardKeys: readonly KeyEntry[] = [
  { keys: 'Arrows', words: 'Move the cursor; with Shift, choose more cells' },
  { keys: '1 to 9', words: 'Write the digit in the chosen way' },
  { keys: '0, Delete, Backspace', words: 'Erase the chosen cells' },
  { keys: 'Enter', words: 'Cell mark is finished' },
  { keys: 'D, B, C, X', words: 'Write digits, block marks, cell marks, strikes' },
  { keys: 'Ctrl+Z', words: 'Undo' },
  { keys: 'Ctrl+Y, Ctrl+Shift+Z', words: 'Redo' },
  { keys: 'Y', words: 'Why a digit is, or cannot be, in the cell' },
  { keys: 'L', words: 'Load a puzzle' },
  { keys: 'M', words: 'Follow my screen; while a reading waits, go to it' },
  { keys: 'J', words: 'Load the other puzzle that is on the screen' },
  { keys: 'I', words: 'Take what is on the screen, where it differs from the board' },
];

export const airKeys: readonly KeyEntry[] = [
  { keys: '] and [', words: 'Next or previous deduction stands by' },
  { keys: '/', words: 'Filter the deductions' },
  { keys: 'R', words: 'Ladder: which rules are looked for' },
  { keys: 'O', words: 'Run sheet: open it, go to it; in it, close it' },
  { keys: 'In the sheet: arrows, Enter', words: 'The next step; what to say at it' },
  { keys: 'E', words: 'Cells to watch for a featured rule, one rule after the other' },
  { keys: 'U', words: 'Said or used' },
  { keys: 'N', words: 'Next grade on air' },
  { keys: 'P', words: 'One grade back; from the first, off air' },
  { keys: 'Escape', words: 'Clear the air at once' },
  { keys: 'A', words: 'Allow co-hosts to put things on air, or forbid it (presenter)' },
  { keys: 'H', words: 'Show on this board what viewers call, or hide it' },
  { keys: 'F', words: 'The cells that viewers call stand by, without digits' },
  { keys: 'V', words: 'Viewers: what they may ask, their page, how far behind they are' },
  { keys: 'G', words: 'The recording starts now, pauses, goes on (presenter)' },
  { keys: 'S', words: 'Shows: begin another, replay, chapters (presenter)' },
  { keys: '?', words: 'This list' },
];

export const cueKeys: readonly KeyEntry[] = [
  { keys: 'Q', words: 'Put the chosen deduction on the cue list' },
  { keys: 'W', words: 'Write a talking point' },
  { keys: 'T', words: 'Take the cue that is called out on air' },
  { keys: 'K', words: 'The cue that is called out is done' },
  { keys: 'In the list: arrows', words: 'Pick a cue; with Alt, move it' },
  { keys: 'In the list: S, G, K, L, T', words: 'Stand by, go, done, listed again, take on air' },
  { keys: 'In the list: E, Delete', words: 'Edit its words, take it off the list' },
];
