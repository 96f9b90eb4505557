import type { CellCalls } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { callWords } from './words.ts';

/** What viewers say to have found, cell by cell. For the desk alone; on air go the cells only, when they are asked to. */
export function CallList({ calls }: { calls: readonly CellCalls[] }) {
  const { viewers, air } = useDesk();
  return (
    <section class="calls" aria-label="Calls">
      <div class="row">
        <h3>"I have found it"</h3>
        <label class="check push">
          <input
            type="checkbox"
            aria-keyshortcuts="H"
            checked={viewers.showsCalls.value}
            onChange={(event) => viewers.showCalls(event.currentTarget.checked)}
          />
          Show on this board <KeyHint keys="H" />
        </label>
        <button
          type="button"
          disabled={!air.mayAir.value || calls.length === 0}
          title="Shows which cells, and about how many viewers; no digits, and not who is right"
          aria-keyshortcuts="F"
          onClick={() => air.standByCalls()}
        >
          Stand by the cells <KeyHint keys="F" />
        </button>
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
