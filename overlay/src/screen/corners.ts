/** Corners of a grid in a picture, and the part of the picture that is sent for them. In pixels of the picture. */

export interface Point {
  x: number;
  y: number;
}

export interface Size {
  width: number;
  height: number;
}

export interface Box extends Size {
  left: number;
  top: number;
}

/** Clockwise from the upper left. */
export type Corners = readonly [Point, Point, Point, Point];

export const cornerNames = ['Upper left', 'Upper right', 'Lower right', 'Lower left'] as const;

/** A grid is at least this wide and high: below, its marks cannot be read by anybody. */
export const leastSide = 90;

/** What is left round the grid, as a share of its side, so that its border is in the picture. */
const margin = 1 / 24;

/** The longest side of what is sent; 60 pixels a cell and the margin. */
export const longestCrop = 585;

/** A square in the middle of a picture, to begin with where no grid was found. */
export function firstCorners({ width, height }: Size): Corners {
  const side = Math.min(width, height) * 0.8;
  const left = (width - side) / 2;
  const top = (height - side) / 2;
  return rectangle(left, top, left + side, top + side);
}

/** The corners that the server found in a picture which may have been sent smaller. */
export function foundCorners(numbers: readonly number[], scale: number): Corners | null {
  const [a, b, c, d, e, f, g, h] = numbers;
  if (numbers.length !== 8 || a === undefined || b === undefined || c === undefined || d === undefined)
    return null;
  if (e === undefined || f === undefined || g === undefined || h === undefined) return null;
  const at = (x: number, y: number) => ({ x: x / scale, y: y / scale });
  return [at(a, b), at(c, d), at(e, f), at(g, h)];
}

/** One corner moved by some pixels. It stays in the picture and on its own side of the others. */
export function moved(corners: Corners, index: number, right: number, down: number, size: Size): Corners {
  const old = corners[index];
  if (!old) return corners;
  // Clockwise: across is 0 to 1 and 3 to 2, diagonally 0 to 2 and 1 to 3.
  const at = (other: number) => corners[other] ?? old;
  const across = [at(index ^ 1).x, at(index ^ 2).x];
  const along = [at(3 - index).y, at(index ^ 2).y];
  const isLeft = index === 0 || index === 3;
  const isTop = index < 2;
  const next = {
    x: isLeft
      ? within(old.x + right, 0, Math.min(...across) - leastSide)
      : within(old.x + right, Math.max(...across) + leastSide, size.width),
    y: isTop
      ? within(old.y + down, 0, Math.min(...along) - leastSide)
      : within(old.y + down, Math.max(...along) + leastSide, size.height),
  };
  const [first, second, third, fourth] = corners;
  const or = (place: number, point: Point) => (place === index ? next : point);
  return [or(0, first), or(1, second), or(2, third), or(3, fourth)];
}

/** The part of the picture with the grid and a little round it. */
export function boxOf(corners: Corners, size: Size): Box {
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const room = Math.max(right - left, bottom - top) * margin;
  const from = { x: Math.max(0, Math.floor(left - room)), y: Math.max(0, Math.floor(top - room)) };
  const to = {
    x: Math.min(size.width, Math.ceil(right + room)),
    y: Math.min(size.height, Math.ceil(bottom + room)),
  };
  return { left: from.x, top: from.y, width: to.x - from.x, height: to.y - from.y };
}

/** The size in which a part of the picture is sent: as it is, or smaller. */
export function sentSize({ width, height }: Size, longest: number): Size {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** The corners in what is sent. */
export function inSent(corners: Corners, box: Box, sent: Size): number[] {
  return corners.flatMap(({ x, y }) => [
    within(((x - box.left) * sent.width) / box.width, 0, sent.width),
    within(((y - box.top) * sent.height) / box.height, 0, sent.height),
  ]);
}

/** The part of what was sent with one cell, 0 to 80. Grids on screens stand straight. */
export function cellBox(cell: number, corners: readonly number[]): Box {
  const [left = 0, top = 0, , , right = 0, bottom = 0] = corners;
  const width = (right - left) / 9;
  const height = (bottom - top) / 9;
  return { left: left + (cell % 9) * width, top: top + Math.floor(cell / 9) * height, width, height };
}

function rectangle(left: number, top: number, right: number, bottom: number): Corners {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

function within(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), Math.max(low, high));
}
