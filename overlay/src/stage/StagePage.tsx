import { BoardFace } from '../board/BoardFace.tsx';
import { Caption } from '../picture/Caption.tsx';
import { codeWords } from '../picture/DelayCode.tsx';
import { CreditLine } from './CreditLine.tsx';
import type { StageModel } from './model.ts';
import './stage.css';

interface Props {
  model: StageModel;
  /** Why the server does not let the page in; empty while it does. */
  refusal: string;
}

/** The whole board on air: as large as it can be, with its credit and what is on air. */
export function StagePage({ model, refusal }: Props) {
  const view = model.view.value;
  const picture = model.picture.value;
  if (!view) return refusal === '' ? null : <p class="stage-refusal">{refusal}</p>;
  return (
    <main class="stage">
      <div class="stage-board">
        <BoardFace cells={view.cells} shapes={picture?.shapes} />
      </div>
      <CreditLine credit={view.credit} />
      <div class="stage-caption">
        {view.code !== null && <Caption words={codeWords(view.code)} />}
        {picture && picture.caption !== '' && <Caption words={picture.caption} />}
      </div>
    </main>
  );
}
