import type { CellName } from '../wire.ts';

/** The 81 cells are counted row by row from 0, as in the views. */
export const cellCount = 81;

/** 0 to 8 */
export const rowOf = (cell: number) => Math.floor(cell / 9);

/** 0 to 8 */
export const columnOf = (cell: number) => cell % 9;

export const cellAt = (row: number, column: number) => row * 9 + column;

/** `r4c7` for the cell of row 4 and column 7. */
export const nameOf = (cell: number): CellName => `r${rowOf(cell) + 1}c${columnOf(cell) + 1}`;

/** The cell of a name, or null where the name is none. */
export function cellNamed(name: CellName): number | null {
  const [, row, column] = /^r([1-9])c([1-9])$/.exec(name) ?? [];
  return row && column ? cellAt(Number(row) - 1, Number(column) - 1) : null;
}

export const digits = [1, 2, 3, 4, 5, 6, 7, 8, 9] as const;

/** The cell that lies so many rows and columns away, or the last one before the edge of the board. */
export function neighbour(cell: number, down: number, right: number): number {
  const inside = (at: number) => Math.min(8, Math.max(0, at));
  return cellAt(inside(rowOf(cell) + down), inside(columnOf(cell) + right));
}
