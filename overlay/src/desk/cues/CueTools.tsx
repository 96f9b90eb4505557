import type { CallOut, CueStage } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { GradeSelect } from './GradeSelect.tsx';
import { stages } from './stages.ts';

const order: readonly CueStage[] = ['standBy', 'go', 'done', 'listed'];

/** What can be done to the call-out that is picked. */
export function CueTools({ callOut, focusText }: { callOut: CallOut; focusText: () => void }) {
  const { cues, air } = useDesk();
  const all = cues.callOuts.value;
  const { deduction } = callOut;
  const edit = () => {
    cues.edit(callOut);
    focusText();
  };
  return (
    <div class="row cue-tools" role="group" aria-label="The cue that is picked">
      {order
        .filter((stage) => stage !== callOut.stage)
        .map((stage) => (
          <button type="button" key={stage} onClick={() => void cues.turn(callOut, stage)}>
            {stages[stage].name} <KeyHint keys={stages[stage].key} />
          </button>
        ))}
      {deduction && (
        <button
          type="button"
          disabled={!air.mayAir.value || deduction.passed !== null || callOut.stage === 'done'}
          onClick={() => cues.takeOnAir(callOut)}
        >
          On air <KeyHint keys="T" />
        </button>
      )}
      <button
        type="button"
        aria-label="Move up"
        disabled={all[0]?.id === callOut.id}
        onClick={() => cues.move(callOut, -1)}
      >
        ↑
      </button>
      <button
        type="button"
        aria-label="Move down"
        disabled={all.at(-1)?.id === callOut.id}
        onClick={() => cues.move(callOut, 1)}
      >
        ↓
      </button>
      {deduction ? (
        <GradeSelect
          label="Grade of the picked cue"
          value={deduction.grade}
          onChoose={(grade) => cues.regrade(callOut, grade)}
        />
      ) : (
        <button type="button" onClick={edit}>
          Edit <KeyHint keys="E" />
        </button>
      )}
      <button type="button" onClick={() => cues.remove(callOut)}>
        Remove
      </button>
    </div>
  );
}
