import type { FeaturedLine, FeaturedRule, OtherLine } from '../../wirePlan.ts';
import { useDesk } from '../context.ts';
import { PlanMark } from './PlanMark.tsx';
import { ruleName } from './ruleName.ts';

interface Props {
  turns: readonly FeaturedLine[];
  featured: readonly FeaturedRule[];
}

/** Where each featured rule has its turn; one that is not on the way any more was shown already. */
export function Turns({ turns, featured }: Props) {
  const rungs = useDesk().ladder.view.value?.rungs;
  if (featured.length === 0) return null;
  const shown = featured.filter(({ rule }) => !turns.some((turn) => turn.rule === rule));
  return (
    <ul class="turns">
      {turns.map((turn) => (
        <li key={turn.rule}>
          <PlanMark mark="featured" /> {turn.name}: {where(turn)}.
        </li>
      ))}
      {shown.map(({ rule }) => (
        <li key={rule}>{ruleName(rungs, rule)}: shown already.</li>
      ))}
    </ul>
  );
}

function where({ step, others }: FeaturedLine): string {
  if (step === null) return 'open nowhere on the way';
  const also = others.map(
    (other) => `${other.cells.join(' ')}, which ${follows(other)}, before ${steps(other)}`,
  );
  return [`step ${step}`, ...(also.length > 0 ? [`also open: ${also.join('; ')}`] : [])].join('; ');
}

function steps({ fromStep, toStep }: OtherLine): string {
  return fromStep === toStep ? `step ${fromStep}` : `steps ${fromStep} to ${toStep}`;
}

function follows({ places, removes }: OtherLine): string {
  const digits = (candidates: OtherLine['places']) =>
    [...new Set(candidates.map(({ digit }) => digit))].sort().join(' and ');
  return places.length > 0 ? `places ${digits(places)}` : `takes out ${digits(removes)}`;
}
