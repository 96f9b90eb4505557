import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';

/** Narrows the list by words and by rule. */
export function Filter() {
  const { next } = useDesk();
  return (
    <div class="filter row">
      <label>
        <span class="unseen">Filter: rule, cell or digit</span>
        <input
          id="filter"
          type="search"
          placeholder="Filter"
          aria-keyshortcuts="/"
          value={next.text.value}
          onInput={(event) => next.filter(event.currentTarget.value)}
        />
        <KeyHint keys="/" />
      </label>
      <label>
        <span class="unseen">Rule</span>
        <select value={next.rule.value} onChange={(event) => next.show(event.currentTarget.value)}>
          <option value="">All rules</option>
          {next.rules.value.map(({ rule, name, deductions }) => (
            <option key={rule} value={rule}>
              {name} ({deductions.length})
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
