import 'virtual:palette/board.css';
import { columnOf, rowOf } from '../grid/cells.ts';
import { coveredBy } from '../picture/covered.ts';
import { Shapes } from '../picture/Shapes.tsx';
import type { StageCell } from '../wire.ts';
import type { Shape } from '../wirePicture.ts';
import { BoardLines } from './BoardLines.tsx';
import { CellFace } from './CellFace.tsx';
import './board.css';

interface Props {
  cells: readonly StageCell[];
  /** For each cell, further candidates to show; none where left out. */
  candidates?: readonly (readonly number[])[] | undefined;
  /** Drawn over it. */
  shapes?: readonly Shape[] | undefined;
}

/** A board as it is written, with a picture over it, in board units: 9 by 9, with room for the outer line. */
export function BoardFace({ cells, candidates, shapes = [] }: Props) {
  const covered = coveredBy(shapes);
  const at = (index: number) => ({ x: columnOf(index), y: rowOf(index) });
  return (
    <svg class="board-face" viewBox="-0.05 -0.05 9.1 9.1" aria-hidden="true" focusable="false">
      <rect class="ground" width="9" height="9" />
      {cells.map(
        (cell, index) =>
          cell.isGiven && <rect key={index} class="given-ground" {...at(index)} width="1" height="1" />,
      )}
      <BoardLines />
      {cells.map(
        (cell, index) =>
          !covered.has(index) && (
            <CellFace key={index} cell={cell} {...at(index)} candidates={candidates?.[index]} />
          ),
      )}
      <Shapes shapes={shapes} />
    </svg>
  );
}
