import type { CellCalls } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { callWords } from './words.ts';

/** What viewers say to have found, cell by cell. For the desk alone. */
export function CallList({ calls }: { calls: readonly CellCalls[] }) {
  const { viewers } = useDesk();
  return (
    <section class="calls" aria-label="Calls">
      <div class="row">
        <h3>"I have found it"</h3>
        <label class="check push">
          <input
            type="checkbox"
            checked={viewers.showsCalls.value}
            onChange={(event) => viewers.showCalls(event.currentTarget.checked)}
          />
          Show on this board
        </label>
      </div>
      {calls.length === 0 ? (
        <p class="empty">Nobody has called a cell yet.</p>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a long list is scrolled by the keyboard too
        <ul tabIndex={0}>
          {calls.map((each) => (
            <li key={each.cell}>
              <b>{each.cell}</b> {callWords(each)}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
