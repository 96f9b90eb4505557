import { cellNamed, columnOf, rowOf } from '../../grid/cells.ts';
import { drop } from '../../grid/text.ts';
import type { CellCalls } from '../../wire.ts';

const height = 0.3;
const size = 0.24;

/**
 * How many viewers name which cell: a tag in the cell's corner, and at its foot a line as long as their share.
 * Drawn on the desk's own board alone.
 */
export function CallCounts({ calls }: { calls: readonly CellCalls[] }) {
  const most = Math.max(1, ...calls.map(({ viewers }) => viewers));
  return (
    <svg class="call-counts" viewBox="-0.05 -0.05 9.1 9.1" aria-hidden="true">
      {calls.map(({ cell, viewers }) => (
        <Count key={cell} cell={cellNamed(cell) ?? 0} viewers={viewers} share={viewers / most} />
      ))}
    </svg>
  );
}

function Count({ cell, viewers, share }: { cell: number; viewers: number; share: number }) {
  const words = viewers > 999 ? '999+' : `${viewers}`;
  const width = height + 0.14 * (words.length - 1);
  const left = columnOf(cell);
  const top = rowOf(cell);
  const x = left + 1 - width;
  return (
    <g>
      <rect class="tag" x={x} y={top} width={width} height={height} />
      <rect class="tag" x={left + 0.04} y={top + 0.93} width={0.92 * share} height={0.05} />
      <text x={x + width / 2} y={top + height / 2 + size * drop} font-size={size}>
        {words}
      </text>
    </g>
  );
}
