import { useDesk } from '../context.ts';

/** How many cues there are, and the way to be rid of those that are over. */
export function CuesOver() {
  const { cues } = useDesk();
  const all = cues.callOuts.value;
  const over = all.filter(({ stage, deduction }) => stage === 'done' || (deduction?.passed ?? null) !== null);
  return (
    <div class="row">
      <p class="count">{all.length === 0 ? 'none' : all.length}</p>
      {over.length > 0 && (
        <button type="button" onClick={() => cues.sweep()}>
          Clear {over.length} done or passed
        </button>
      )}
    </div>
  );
}
