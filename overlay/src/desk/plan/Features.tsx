import type { FeaturedLine } from '../../wirePlan.ts';
import { useDesk } from '../context.ts';
import { FeaturedRules } from './FeaturedRules.tsx';
import { Turns } from './Turns.tsx';

/** The rules that the puzzle is to show, folded away. */
export function Features({ turns }: { turns: readonly FeaturedLine[] | null }) {
  const { plan } = useDesk();
  const featured = plan.featured.value;
  return (
    <details class="features">
      <summary data-stop>
        <b>Featured rules</b>
        <small>{turns ? inShort(turns, featured.length) : ''}</small>
      </summary>
      {turns && <Turns turns={turns} featured={featured} />}
      <FeaturedRules
        featured={featured}
        disabled={!plan.mayFeature.value}
        onChange={(changed) => plan.feature(changed)}
      />
    </details>
  );
}

function inShort(turns: readonly FeaturedLine[], featured: number): string {
  if (featured === 0) return 'none';
  const ahead = turns.flatMap(({ name, step }) => (step === null ? [] : [`${name}: step ${step}`]));
  return ahead.length > 0 ? ahead.join(', ') : 'none on the way';
}
