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
