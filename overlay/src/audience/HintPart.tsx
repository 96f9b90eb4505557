import { gradeNamed, gradeNames } from '../grades.ts';
import { nameOf } from '../grid/cells.ts';
import type { AudienceView } from '../wireAudience.ts';
import type { AudienceModel } from './model.ts';
import { noHintsWords } from './words.ts';

/** The four grades of a hint: of the easiest deduction there is, or of the easiest that touches the chosen cell. */
export function HintPart({ model, view }: { model: AudienceModel; view: AudienceView }) {
  const cell = model.touched;
  const off = noHintsWords(view);
  const { highest } = view.asks;
  return (
    <section aria-labelledby="hints">
      <h2 id="hints">{cell === null ? 'A hint' : `A hint that touches ${nameOf(cell)}`}</h2>
      <div class="grades">
        {gradeNames.map(({ grade }) => (
          <button
            key={grade}
            type="button"
            disabled={off !== null || grade > highest}
            aria-disabled={model.isAsking.value}
            onClick={() => model.hint(grade)}
          >
            {gradeNamed(grade)}
          </button>
        ))}
      </div>
      <p class="quiet">
        {off ??
          (highest < 4
            ? `Hints go as far as ${gradeNamed(highest)} for now.`
            : 'Each goes further than the one before.')}
      </p>
    </section>
  );
}
