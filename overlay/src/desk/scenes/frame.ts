import type { Frame } from '../../wire.ts';

/** What of a frame is taken hold of: all of it, or a corner. */
export type Grip = 'body' | 'topLeft' | 'topRight' | 'bottomLeft' | 'bottomRight';

export const corners = ['topLeft', 'topRight', 'bottomLeft', 'bottomRight'] as const;

/** A frame is at least this wide and high, as a share of the picture; the server refuses less. */
export const least = 0.05;

/** How far one press of an arrow key goes, as a share of the picture. */
export const keyStep = 0.002;

/** Width over height of the picture that scenes are laid out in. */
export const pictureAspect = 16 / 9;

/** A square board inside the safe area, for a scene that was never placed. */
export const firstFrame: Frame = { left: 0.06, top: 0.08, width: 0.84 / pictureAspect, height: 0.84 };

/** The frame after its grip was moved by shares of the picture. It stays inside and keeps its least size. */
export function dragged(frame: Frame, grip: Grip, right: number, down: number): Frame {
  if (grip === 'body') return moved(frame, right, down);
  const [left, width] = grip.endsWith('Left')
    ? fromStart(frame.left, frame.width, right)
    : fromEnd(frame.left, frame.width, right);
  const [top, height] = grip.startsWith('top')
    ? fromStart(frame.top, frame.height, down)
    : fromEnd(frame.top, frame.height, down);
  return { left, top, width, height };
}

/** The same, for a board that is square on a 16:9 picture: the width leads, and the corner opposite to the grip stays. */
export function draggedSquare(frame: Frame, grip: Grip, right: number, down: number): Frame {
  if (grip === 'body') return moved(frame, right, down);
  const isLeft = grip.endsWith('Left');
  const isTop = grip.startsWith('top');
  const outwards = (isLeft ? -right : right) * pictureAspect + (isTop ? -down : down);
  const roomAcross = isLeft ? frame.left + frame.width : 1 - frame.left;
  const roomDown = isTop ? frame.top + frame.height : 1 - frame.top;
  const most = Math.min(roomDown, roomAcross * pictureAspect);
  const height = within(frame.height + outwards / 2, least * pictureAspect, most);
  const width = height / pictureAspect;
  return {
    left: isLeft ? frame.left + frame.width - width : frame.left,
    top: isTop ? frame.top + frame.height - height : frame.top,
    width,
    height,
  };
}

/** Whether a frame is square on a 16:9 picture, to within a step of the keys. */
export function isSquare({ width, height }: Frame): boolean {
  return Math.abs(width * pictureAspect - height) < keyStep;
}

/** The frame with one of its numbers set by hand, brought back inside. */
export function withNumber(frame: Frame, name: keyof Frame, value: number): Frame {
  const next = { ...frame, [name]: value };
  const width = within(next.width, least, 1);
  const height = within(next.height, least, 1);
  return { left: within(next.left, 0, 1 - width), top: within(next.top, 0, 1 - height), width, height };
}

function moved(frame: Frame, right: number, down: number): Frame {
  return {
    ...frame,
    left: within(frame.left + right, 0, 1 - frame.width),
    top: within(frame.top + down, 0, 1 - frame.height),
  };
}

function fromStart(start: number, length: number, by: number): [start: number, length: number] {
  const end = start + length;
  const next = within(start + by, 0, end - least);
  return [next, end - next];
}

function fromEnd(start: number, length: number, by: number): [start: number, length: number] {
  return [start, within(length + by, least, 1 - start)];
}

function within(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), Math.max(low, high));
}
