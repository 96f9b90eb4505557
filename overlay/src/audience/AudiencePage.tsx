import { BoardFace } from '../board/BoardFace.tsx';
import type { Line } from '../connection/line.ts';
import { AnswerPart } from './AnswerPart.tsx';
import { AudienceGrid } from './AudienceGrid.tsx';
import { CellPart } from './CellPart.tsx';
import { HintPart } from './HintPart.tsx';
import type { AudienceModel } from './model.ts';
import { PuzzleLine } from './PuzzleLine.tsx';
import { delayWords, waitingWords } from './words.ts';
import './audience.css';

interface Props {
  model: AudienceModel;
  line: Pick<Line, 'state' | 'refusal'>;
}

/** For viewers: the board as their picture has it, and hints as far as the presenter lets them go. */
export function AudiencePage({ model, line }: Props) {
  const view = model.view.value;
  const cells = model.cells.value;
  const refusal = line.refusal.value;
  const state = line.state.value;
  if (refusal !== '' || !view || !cells) {
    return (
      <main class="audience waiting">
        <p role="status">{refusal === '' ? waitingWords(state, view) : refusal}</p>
      </main>
    );
  }
  return (
    <main class="audience">
      {view.credit && <PuzzleLine credit={view.credit} />}
      <div class="audience-board">
        <BoardFace cells={cells} shapes={model.told.value?.shapes} />
        <AudienceGrid model={model} cells={cells} />
      </div>
      <div class="asks">
        <AnswerPart model={model} />
        <HintPart model={model} view={view} />
        <CellPart model={model} cells={cells} />
        <p class="quiet" role="status">
          {state === 'connected' ? delayWords(view) : 'The connection is lost: trying again.'}
        </p>
      </div>
    </main>
  );
}
