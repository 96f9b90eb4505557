import type { CallOut } from '../../wire.ts';
import { aboutWords } from './gradeWords.ts';
import { StageShape } from './StageShape.tsx';
import { stages } from './stages.ts';

interface Props {
  elementId: string;
  callOut: CallOut;
  isPicked: boolean;
}

/** One call-out of the list. */
export function CueRow({ elementId, callOut, isPicked }: Props) {
  const { id, stage, text, seconds, deduction } = callOut;
  const passed = deduction?.passed;
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: the listbox holds the focus and names its active option
    <div
      role="option"
      class={`cue-row ${stage}${passed ? ' passed' : ''}`}
      id={elementId}
      data-cue={id}
      aria-selected={isPicked}
    >
      <StageShape stage={stage} />
      <span class="cue-text">{text}</span>
      <span class="facts">
        {stage !== 'listed' && <b>{stages[stage].name} · </b>}
        {aboutWords(callOut)} · {Math.round(seconds)} s{passed && <b> · {passed}</b>}
      </span>
    </div>
  );
}
