import { cellNamed, columnOf, rowOf } from '../../grid/cells.ts';
import { drop } from '../../grid/text.ts';
import type { CellCalls } from '../../wire.ts';

const height = 0.3;
const size = 0.24;
const letter = 0.14;

/**
 * How many viewers call which cell: a tag in the cell's upper corner with their number, one with a tick in the lower corner with how
 * many are right, and at the cell's foot a line as long as their share. Drawn on the desk's own board alone.
 */
export function CallCounts({ calls }: { calls: readonly CellCalls[] }) {
  const most = Math.max(1, ...calls.map(({ viewers }) => viewers));
  return (
    <svg class="call-counts" viewBox="-0.05 -0.05 9.1 9.1" aria-hidden="true">
      {calls.map((each) => (
        <Count key={each.cell} calls={each} share={each.viewers / most} />
      ))}
    </svg>
  );
}

function Count({ calls: { cell, viewers, right }, share }: { calls: CellCalls; share: number }) {
  const index = cellNamed(cell) ?? 0;
  const [left, top] = [columnOf(index), rowOf(index)];
  return (
    <g>
      <rect class="tag" x={left + 0.04} y={top + 0.93} width={0.92 * share} height={0.05} />
      <Tag right={left + 1} top={top} words={short(viewers)} />
      {right > 0 && <Tag right={left + 1} top={top + 0.62} words={`✓${short(right)}`} isOpen />}
    </g>
  );
}

interface TagProps {
  /** Its upper right corner. */
  right: number;
  top: number;
  words: string;
  /** An outline with its words inside, where the other is filled. */
  isOpen?: boolean;
}

function Tag({ right, top, words, isOpen = false }: TagProps) {
  const width = height + letter * (words.length - 1);
  return (
    <g class={isOpen ? 'open' : ''}>
      <rect class="tag" x={right - width} y={top} width={width} height={height} />
      <text x={right - width / 2} y={top + height / 2 + size * drop} font-size={size}>
        {words}
      </text>
    </g>
  );
}

function short(count: number): string {
  return count > 999 ? '999+' : `${count}`;
}
