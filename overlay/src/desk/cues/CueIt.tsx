import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { GradeSelect } from './GradeSelect.tsx';

/** Puts the deduction that is chosen in Next on the cue list. A co-host says first how far it goes. */
export function CueIt({ deduction }: { deduction: string }) {
  const { air, cues } = useDesk();
  return (
    <>
      <button type="button" aria-keyshortcuts="Q" onClick={() => cues.cue(deduction)}>
        Cue <KeyHint keys="Q" />
      </button>
      {!air.isPresenter.value && (
        <GradeSelect
          label="Grade of the cue"
          value={cues.grade.value}
          onChoose={(grade) => cues.chooseGrade(grade)}
        />
      )}
    </>
  );
}
