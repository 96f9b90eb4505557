import type { PassageLine, RunSheet } from '../../wirePlan.ts';
import { clock } from './clock.ts';
import { PlanMark } from './PlanMark.tsx';
import { StepRow } from './StepRow.tsx';

/** The passages of the way. The one that comes now, and those in which something is marked or noted, are open. */
export function Passages({ sheet, notes }: { sheet: RunSheet; notes: readonly string[] }) {
  return (
    <div class="passages">
      {sheet.passages.map((passage) => (
        <Passage key={`${passage.first} ${passage.title}`} passage={passage} sheet={sheet} notes={notes} />
      ))}
    </div>
  );
}

function Passage({
  passage,
  sheet,
  notes,
}: {
  passage: PassageLine;
  sheet: RunSheet;
  notes: readonly string[];
}) {
  const { first, last, at, seconds, title } = passage;
  const steps = sheet.steps.slice(first - 1, last);
  const gates = steps.filter(({ isGate }) => isGate).length;
  const isFeatured = steps.some((step) => step.isFeatured);
  const isNoted = steps.some(({ number }) => (notes[number - 1] ?? '') !== '');
  return (
    <details open={first === 1 || isFeatured || isNoted}>
      <summary>
        <time>{clock(at)}</time>
        {first === 1 && <PlanMark mark="now" />}
        {isFeatured && <PlanMark mark="featured" />}
        {gates > 0 && <PlanMark mark="gate" />}
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
            note={notes[step.number - 1] ?? ''}
            points={sheet.talkingPoints.filter((point) => point.step === step.number)}
            isNow={step.number === 1}
          />
        ))}
      </ol>
    </details>
  );
}
