import { drop } from '../grid/text.ts';
import type { StageCell } from '../wire.ts';
import { smallDigitsOf } from './marks.ts';
import { SmallMark } from './SmallMark.tsx';

interface Props {
  cell: StageCell;
  /** Top left corner, in board units. */
  x: number;
  y: number;
  candidates?: readonly number[] | undefined;
}

const size = 0.66;

/** What is written in one cell: a digit or, as long as there is none, the marks. */
export function CellFace({ cell, x, y, candidates }: Props) {
  if (cell.digit !== null) {
    return (
      <text class={cell.isGiven ? 'given' : 'placed'} x={x + 0.5} y={y + 0.5 + size * drop} font-size={size}>
        {cell.digit}
      </text>
    );
  }
  return (
    <g>
      {smallDigitsOf(cell, candidates).map((mark) => (
        <SmallMark key={mark.digit} mark={mark} x={x} y={y} />
      ))}
    </g>
  );
}
