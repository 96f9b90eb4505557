import type { Frame } from '../wire.ts';

/** Graphics keep this far from every edge of the picture, as a share of its width and height (EBU R 95). */
export const safe = 0.05;

/** Size of the caption's letters, as a share of the picture's height. */
export const letterHeight = 0.034;

/** Where a caption goes, and the edge of that room at which it stands. All in shares of the picture. */
export interface CaptionPlace {
  side: 'below' | 'above' | 'left' | 'right' | 'over';
  left: number;
  top: number;
  width: number;
  height: number;
}

const gap = 0.012;
const lineHeight = letterHeight * 1.3;
/** Padding and edges of the plate, above and below together. */
const plate = letterHeight * 1.1;
/** Mean width of a letter of a heavy sans serif, as a share of its height. */
const letterWidth = 0.56;

/**
 * Finds the room for a caption: below the board, else above it, else beside it on the wider side, else over its foot; the first in
 * which all the words fit inside the safe area.
 * @param aspect Width of the picture over its height.
 */
export function placeCaption(frame: Frame, letters: number, aspect: number): CaptionPlace {
  const rooms = [below(frame), above(frame), ...beside(frame)];
  return rooms.find((room) => fits(room, letters, aspect)) ?? over(frame, letters, aspect);
}

function below(frame: Frame): CaptionPlace {
  const top = frame.top + frame.height + gap;
  return { side: 'below', ...across(frame), top, height: 1 - safe - top };
}

function above(frame: Frame): CaptionPlace {
  return { side: 'above', ...across(frame), top: safe, height: frame.top - gap - safe };
}

function beside(frame: Frame): CaptionPlace[] {
  const inner = { top: safe, height: 1 - 2 * safe };
  const rightEdge = frame.left + frame.width + gap;
  const left: CaptionPlace = { side: 'left', left: safe, width: frame.left - gap - safe, ...inner };
  const right: CaptionPlace = { side: 'right', left: rightEdge, width: 1 - safe - rightEdge, ...inner };
  return left.width > right.width ? [left, right] : [right, left];
}

/** Nowhere else: the board gives way to the words at its foot. */
function over(frame: Frame, letters: number, aspect: number): CaptionPlace {
  const room = across(frame);
  const height = Math.min(1 - 2 * safe, heightOf(letters, room.width, aspect));
  return { side: 'over', ...room, top: 1 - safe - height, height };
}

/** As wide as the board or, where that is narrow, wider, but inside the safe area. */
function across(frame: Frame): { left: number; width: number } {
  const width = Math.min(1 - 2 * safe, Math.max(frame.width, 0.5));
  const middle = frame.left + frame.width / 2;
  return { left: Math.min(Math.max(middle - width / 2, safe), 1 - safe - width), width };
}

function fits(room: CaptionPlace, letters: number, aspect: number): boolean {
  // A column that is too narrow breaks every word.
  return room.width * aspect >= letterHeight * 8 && heightOf(letters, room.width, aspect) <= room.height;
}

function heightOf(letters: number, width: number, aspect: number): number {
  const perLine = Math.max(
    1,
    Math.floor((width * aspect - 1.4 * letterHeight) / (letterHeight * letterWidth)),
  );
  return Math.ceil(letters / perLine) * lineHeight + plate;
}
