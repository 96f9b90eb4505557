import { nameOf } from '../grid/cells.ts';
import type { StageCell } from '../wire.ts';

/** A cell in words, for who does not see it; with further candidates where some are shown. */
export function cellLabel(index: number, cell: StageCell, candidates: readonly number[] = []): string {
  const { digit, isGiven, blockMarks, cellMark, struck } = cell;
  const name = nameOf(index);
  if (digit !== null) return `${name}, ${digit}${isGiven ? ', given' : ''}`;
  const parts = [
    listed('block marks', blockMarks),
    listed('cell mark', cellMark ?? []),
    listed('struck', struck),
    listed('candidates', candidates),
  ].filter(Boolean);
  return [name, 'open', ...parts].join(', ');
}

function listed(name: string, digits: readonly number[]): string {
  return digits.length > 0 ? `${name} ${digits.join(' ')}` : '';
}
