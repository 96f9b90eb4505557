import type { FeaturedRule } from '../../wirePlan.ts';
import { useDesk } from '../context.ts';
import './plan.css';
import { ruleName } from './ruleName.ts';

/** More are no feature any more; the server takes no more either. */
const most = 5;

interface Props {
  featured: readonly FeaturedRule[];
  disabled?: boolean;
  onChange: (featured: FeaturedRule[]) => void;
}

/** The rules that a puzzle is to show, each early or late. */
export function FeaturedRules({ featured, disabled = false, onChange }: Props) {
  const rungs = useDesk().ladder.view.value?.rungs ?? [];
  const nameOf = (rule: string) => ruleName(rungs, rule);
  const others = rungs.filter(({ rule, isOn }) => isOn && !featured.some((each) => each.rule === rule));
  const time = (changed: FeaturedRule, isEarly: boolean) =>
    onChange(featured.map((each) => (each === changed ? { ...each, isEarly } : each)));
  return (
    <fieldset class="featured-rules" disabled={disabled}>
      <legend>Featured rules</legend>
      {featured.map((each) => (
        <div class="row" key={each.rule}>
          <b>{nameOf(each.rule)}</b>
          <select
            aria-label={`When to show ${nameOf(each.rule)}`}
            value={each.isEarly ? 'early' : 'late'}
            onChange={(event) => time(each, event.currentTarget.value === 'early')}
          >
            <option value="late">as late as can be</option>
            <option value="early">as soon as it is open</option>
          </select>
          <button
            type="button"
            aria-label={`Take out ${nameOf(each.rule)}`}
            onClick={() => onChange(featured.filter((other) => other !== each))}
          >
            Take out
          </button>
        </div>
      ))}
      {featured.length < most && (
        <select
          aria-label="Feature another rule"
          value=""
          onChange={({ currentTarget }) => {
            if (currentTarget.value !== '')
              onChange([...featured, { rule: currentTarget.value, isEarly: false }]);
            currentTarget.value = '';
          }}
        >
          <option value="">Feature a rule …</option>
          {others.map(({ rule, name }) => (
            <option key={rule} value={rule}>
              {name}
            </option>
          ))}
        </select>
      )}
    </fieldset>
  );
}
