import { digits } from '../grid/cells.ts';
import type { StageCell } from '../wire.ts';

/** A digit written small in a cell. */
export interface SmallDigit {
  digit: number;
  /** A block mark, part of the cell's list (struck or not), or only known to stand, in the panel. */
  kind: 'block' | 'list' | 'standing';
  isStruck: boolean;
}

/** What stands small in a cell: what the presenter wrote and struck and, where asked for, what stands on the known board. */
export function smallDigitsOf(cell: StageCell, candidates: readonly number[] = []): SmallDigit[] {
  const { blockMarks, cellMark, struck } = cell;
  return digits.flatMap((digit): SmallDigit[] => {
    const isStruck = struck.includes(digit);
    if (blockMarks.includes(digit)) return [{ digit, kind: 'block', isStruck }];
    if (isStruck || cellMark?.includes(digit)) return [{ digit, kind: 'list', isStruck }];
    return candidates.includes(digit) ? [{ digit, kind: 'standing', isStruck }] : [];
  });
}
