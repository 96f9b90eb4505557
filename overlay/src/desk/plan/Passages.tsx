import type { PassageLine, RunSheet } from '../../wirePlan.ts';
import { clock } from './clock.ts';
import { PlanMark } from './PlanMark.tsx';
import { StepRow } from './StepRow.tsx';

interface Props {
  sheet: RunSheet;
  /** One for each step of the sheet. */
  notes: readonly string[];
}

/** The passages of the way. The one that comes now, and those in which something is marked or noted, are open. */
export function Passages({ sheet, notes }: Props) {
  return (
    <div class="passages">
      {sheet.passages.map((passage) => (
        // Its beginning moves as its steps are done.
        <Passage key={`${passage.last} ${passage.title}`} passage={passage} sheet={sheet} notes={notes} />
      ))}
    </div>
  );
}

function Passage({ passage, sheet, notes }: Props & { passage: PassageLine }) {
  const { first, last, at, seconds, title } = passage;
  const now = sheet.steps[0]?.number;
  const noteOf = (number: number) => notes[number - (now ?? number)] ?? '';
  const steps = sheet.steps.filter(({ number }) => first <= number && number <= last);
  const hasGate = steps.some(({ isGate }) => isGate);
  const isFeatured = steps.some((step) => step.isFeatured);
  const isNoted = steps.some(({ number }) => noteOf(number) !== '');
  return (
    <details open={first === now || isFeatured || isNoted}>
      <summary data-stop>
        <time>{clock(at)}</time>
        {first === now && <PlanMark mark="now" />}
        {isFeatured && <PlanMark mark="featured" />}
        {hasGate && <PlanMark mark="gate" />}
        <b>{title}</b>
        <small>
          {first === last ? `step ${first}` : `steps ${first} to ${last}`}, {clock(seconds)}
        </small>
      </summary>
      <ol>
        {steps.map((step) => (
          <StepRow
            key={step.short}
            step={step}
            note={noteOf(step.number)}
            points={sheet.talkingPoints.filter((point) => point.step === step.number)}
            isNow={step.number === now}
          />
        ))}
      </ol>
    </details>
  );
}
