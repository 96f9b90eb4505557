import { cellAt, columnOf, rowOf } from '../../grid/cells.ts';

/** The cells chosen on the board, and the cursor, which is always one of them. */
export interface Selection {
  cursor: number;
  cells: ReadonlySet<number>;
}

export const only = (cell: number): Selection => ({ cursor: cell, cells: new Set([cell]) });

/** The cell adds itself and becomes the cursor. */
export function withCell({ cells }: Selection, cell: number): Selection {
  return { cursor: cell, cells: new Set([...cells, cell]) };
}

/** Adds the cell, or takes it out if it was chosen; the last one stays. */
export function toggled(selection: Selection, cell: number): Selection {
  if (!selection.cells.has(cell)) return withCell(selection, cell);
  const left = [...selection.cells].filter((other) => other !== cell);
  const cursor = left.at(-1);
  return cursor === undefined ? selection : { cursor, cells: new Set(left) };
}

/** The cell that lies so many rows and columns away, or the last one before the edge of the board. */
export function neighbour(cell: number, down: number, right: number): number {
  const inside = (at: number) => Math.min(8, Math.max(0, at));
  return cellAt(inside(rowOf(cell) + down), inside(columnOf(cell) + right));
}
