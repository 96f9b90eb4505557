import type { Way } from '../model/board.ts';
import { wayKeys } from './keyList.ts';

/** What a key press asks for. */
export type KeyAction =
  | { kind: 'move'; down: number; right: number; extends: boolean }
  | { kind: 'digit'; digit: number }
  | { kind: 'way'; way: Way }
  | { kind: 'step'; by: 1 | -1 }
  | { kind: SimpleAction };

export type SimpleAction =
  | 'erase'
  | 'settle'
  | 'undo'
  | 'redo'
  | 'load'
  | 'filter'
  | 'used'
  | 'nextGrade'
  | 'back'
  | 'clearAir'
  | 'cueIt'
  | 'writeCue'
  | 'takeCue'
  | 'cueDone'
  | 'allowCoHosts'
  | 'viewers'
  | 'calls'
  | 'airCalls'
  | 'ladder'
  | 'runSheet'
  | 'watchFeatured'
  | 'why'
  | 'shows'
  | 'recording'
  | 'screen'
  | 'loadScreen'
  | 'takeScreen'
  | 'keys';

/** The part of a keyboard event that counts. */
export interface KeyPress {
  key: string;
  code: string;
  ctrlKey: boolean;
  metaKey: boolean;
  altKey: boolean;
  shiftKey: boolean;
  repeat: boolean;
  getModifierState(name: string): boolean;
}

/** Where a key was pressed. */
export interface KeyPlace {
  isDialogOpen: boolean;
  /** A field that takes text, or a list that is searched by typing. */
  isInText: boolean;
  isOnBoard: boolean;
  /** On a button or another control that has its own use for Enter. */
  isOnControl: boolean;
  singleKeys: boolean;
}

const arrows: Record<string, readonly [down: number, right: number]> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  Home: [0, -8],
  End: [0, 8],
};

const letters: Record<string, SimpleAction> = {
  l: 'load',
  u: 'used',
  n: 'nextGrade',
  p: 'back',
  q: 'cueIt',
  w: 'writeCue',
  t: 'takeCue',
  k: 'cueDone',
  a: 'allowCoHosts',
  v: 'viewers',
  h: 'calls',
  f: 'airCalls',
  r: 'ladder',
  o: 'runSheet',
  e: 'watchFeatured',
  y: 'why',
  s: 'shows',
  g: 'recording',
  m: 'screen',
  j: 'loadScreen',
  i: 'takeScreen',
  '/': 'filter',
  '?': 'keys',
};

/** What a key press asks for, or null where it is not the desk's. */
export function actionFor(press: KeyPress, place: KeyPlace): KeyAction | null {
  if (place.isDialogOpen) return null;
  // A key that is held down would make the broadcast flash.
  if (press.key === 'Escape') return press.repeat ? null : { kind: 'clearAir' };
  if (place.isInText) return null;
  if (isModified(press)) return modified(press);
  return onBoard(press, place) ?? anywhere(press, place);
}

/** AltGr writes brackets and slashes on many keyboards, and comes as Ctrl with Alt. */
function isModified(press: KeyPress): boolean {
  return (press.ctrlKey || press.metaKey || press.altKey) && !press.getModifierState('AltGraph');
}

function modified({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyPress): KeyAction | null {
  if (altKey || ctrlKey === metaKey) return null;
  if (key.toLowerCase() === 'z') return { kind: shiftKey ? 'redo' : 'undo' };
  if (key.toLowerCase() === 'y' && !shiftKey) return { kind: 'redo' };
  return null;
}

function onBoard({ key, shiftKey }: KeyPress, { isOnBoard, isOnControl }: KeyPlace): KeyAction | null {
  const arrow = isOnBoard ? arrows[key] : undefined;
  if (arrow) return { kind: 'move', down: arrow[0], right: arrow[1], extends: shiftKey };
  if (key === 'Enter' && !isOnControl) return { kind: 'settle' };
  return null;
}

function anywhere(press: KeyPress, { isOnBoard, singleKeys }: KeyPlace): KeyAction | null {
  if (press.repeat && press.key !== '[' && press.key !== ']') return null;
  if (press.key === 'Delete' || press.key === 'Backspace') return { kind: 'erase' };
  if (!singleKeys && !isOnBoard) return null;
  const digit = digitOf(press);
  if (digit === 0) return { kind: 'erase' };
  if (digit !== null) return { kind: 'digit', digit };
  return singleKeys ? character(press.key.toLowerCase()) : null;
}

function character(key: string): KeyAction | null {
  if (key === ']') return { kind: 'step', by: 1 };
  if (key === '[') return { kind: 'step', by: -1 };
  const way = wayKeys[key];
  if (way) return { kind: 'way', way };
  const simple = letters[key];
  return simple ? { kind: simple } : null;
}

/** The digit of a key: as written or, on keyboards whose top row writes digits only with Shift, as engraved. */
function digitOf({ key, code, shiftKey }: KeyPress): number | null {
  if (/^[0-9]$/.test(key)) return Number(key);
  const engraved = /^Digit([0-9])$/.exec(code)?.[1];
  return engraved && !shiftKey && key.length === 1 ? Number(engraved) : null;
}
