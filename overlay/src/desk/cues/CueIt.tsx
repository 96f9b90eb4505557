import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { GradeSelect } from './GradeSelect.tsx';

/** Puts the deduction that is chosen in Next on the cue list, as far as a grade goes. */
export function CueIt({ deduction }: { deduction: string }) {
  const { cues } = useDesk();
  return (
    <div class="row">
      <button type="button" aria-keyshortcuts="Q" onClick={() => cues.cue(deduction)}>
        Cue <KeyHint keys="Q" />
      </button>
      <GradeSelect
        label="Grade of the cue"
        value={cues.grade.value}
        onChoose={(grade) => cues.chooseGrade(grade)}
      />
    </div>
  );
}
