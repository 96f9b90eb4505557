import { cellCount, cellNamed } from '../grid/cells.ts';
import type { StageCell } from '../wire.ts';
import type { AudienceBoard } from '../wireAudience.ts';

/** The 81 cells of a board that came as text. */
export function cellsWritten(board: AudienceBoard): StageCell[] {
  const lists = marksOf(board.lists);
  const blockMarks = marksOf(board.blockMarks);
  const struck = marksOf(board.struck);
  return Array.from({ length: cellCount }, (_, cell) => {
    const given = digitAt(board.givens, cell);
    return {
      digit: given ?? digitAt(board.placed, cell),
      isGiven: given !== null,
      cellMark: lists.get(cell) ?? null,
      blockMarks: blockMarks.get(cell) ?? [],
      struck: struck.get(cell) ?? [],
    };
  });
}

function digitAt(digits: string, cell: number): number | null {
  return Number(digits[cell]) || null;
}

/** `r1c1:248 r4c7:13` as digits by cell. */
function marksOf(text: string): ReadonlyMap<number, number[]> {
  const marks = new Map<number, number[]>();
  for (const part of text.split(' ')) {
    const [name = '', digits = ''] = part.split(':');
    const cell = cellNamed(name);
    if (cell !== null) marks.set(cell, [...digits].map(Number));
  }
  return marks;
}
