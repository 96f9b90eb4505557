import { gradeNamed } from '../../grades.ts';
import type { AskLimits } from '../../wire.ts';
import { grades } from '../air/grades.ts';
import { useDesk } from '../context.ts';

interface Props {
  limits: AskLimits;
  isShut: boolean;
}

/** How far viewers may go. */
export function LimitPart({ limits, isShut }: Props) {
  const { viewers } = useDesk();
  return (
    <fieldset class="limits" disabled={isShut}>
      <legend>What they may ask</legend>
      <label class="check">
        <input
          type="checkbox"
          checked={limits.open}
          onChange={(event) => viewers.limit({ open: event.currentTarget.checked })}
        />
        Answer viewers
      </label>
      <div class="row highest" role="radiogroup" aria-label="Highest grade">
        <span>Hints up to</span>
        {grades.map(({ grade }) => (
          <label key={grade} class="check">
            <input
              type="radio"
              name="highest"
              checked={limits.highest === grade}
              onChange={() => viewers.limit({ highest: grade })}
            />
            {gradeNamed(grade)}
          </label>
        ))}
      </div>
      <label class="check">
        <input
          type="checkbox"
          checked={limits.quietOnAir}
          onChange={(event) => viewers.limit({ quietOnAir: event.currentTarget.checked })}
        />
        Quiet while something is on air
      </label>
    </fieldset>
  );
}
