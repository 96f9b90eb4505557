import { BoardFace } from '../../board/BoardFace.tsx';
import type { DeskCell, DeskView } from '../../wire.ts';
import { Area } from '../Area.tsx';
import { useDesk } from '../context.ts';
import { BoardActions } from './BoardActions.tsx';
import { BoardGrid } from './BoardGrid.tsx';
import { CallCounts } from './CallCounts.tsx';
import { DigitRow } from './DigitRow.tsx';
import { Ways } from './Ways.tsx';
import './boardArea.css';

/** The grid as it is written, with a preview of what stands by; only the desk sees that. */
export function BoardArea({ desk }: { desk: DeskView }) {
  const { board, viewers } = useDesk();
  const calls = viewers.shownCalls;
  const { standby, calledStandby, cells } = desk;
  const candidates = board.showsCandidates.value ? cells.map(candidatesOf) : undefined;
  return (
    <Area name="Board" class="board-area" aside={board.mayEnter.value && <BoardActions desk={desk} />}>
      <div class="board">
        <BoardFace
          cells={cells}
          candidates={candidates}
          shapes={(standby ?? calledStandby)?.picture.shapes}
        />
        {calls.length > 0 && <CallCounts calls={calls} />}
        <BoardGrid desk={desk} calls={calls} />
      </div>
      <div class="row">
        {board.mayEnter.value && <Ways />}
        <label class="check">
          <input
            type="checkbox"
            checked={board.showsCandidates.value}
            onChange={(event) => board.showCandidates(event.currentTarget.checked)}
          />
          Candidates
        </label>
      </div>
      {board.mayEnter.value && <DigitRow cells={cells} />}
    </Area>
  );
}

const candidatesOf = (cell: DeskCell) => (cell.digit === null ? cell.candidates : []);
