import type { FeaturedLine, FeaturedRule } from '../../wirePlan.ts';
import { PlanMark } from './PlanMark.tsx';

/** Where each featured rule has its turn; one that is not on the way any more was shown already. */
export function Turns({
  turns,
  featured,
}: {
  turns: readonly FeaturedLine[];
  featured: readonly FeaturedRule[];
}) {
  if (featured.length === 0) return null;
  const shown = featured.length - turns.length;
  return (
    <ul class="turns">
      {turns.map((turn) => (
        <li key={turn.rule}>
          <PlanMark mark="featured" /> {turn.name}: {where(turn)}.
        </li>
      ))}
      {shown > 0 && (
        <li>
          {shown === 1 ? 'A featured rule was shown already.' : `${shown} featured rules were shown already.`}
        </li>
      )}
    </ul>
  );
}

function where({ step, others }: FeaturedLine): string {
  if (step === null) return 'open nowhere on the way';
  const also = others.map(({ cells, fromStep, toStep }) =>
    fromStep === toStep
      ? `${cells.join(' ')} before step ${fromStep}`
      : `${cells.join(' ')} before steps ${fromStep} to ${toStep}`,
  );
  return [`step ${step}`, ...(also.length > 0 ? [`also open: ${also.join('; ')}`] : [])].join('; ');
}
