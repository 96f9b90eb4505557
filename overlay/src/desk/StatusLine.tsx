import { CreditBar } from './CreditBar.tsx';
import { connectionWords } from './connectionWords.ts';
import { useDesk } from './context.ts';
import { KeyHint } from './KeyHint.tsx';

/** The foot of the desk: the connection, and why the last thing asked for was not done. */
export function StatusLine() {
  const model = useDesk();
  const { state, refusal, waiting } = model.line;
  const credit = model.desk.value?.credit;
  const isUp = state.value === 'connected';
  return (
    <footer class="status">
      <p class={isUp ? 'connection up' : 'connection'} role="status">
        <svg viewBox="0 0 12 12" aria-hidden="true" focusable="false">
          <path d={isUp ? 'M2 6.5l3 3 5-7' : 'M2.5 2.5l7 7M9.5 2.5l-7 7'} />
        </svg>
        {connectionWords(state.value, waiting.value)}
      </p>
      {credit && <CreditBar credit={credit} />}
      <p class="said" role="status">
        {refusal.value || model.asking.said.value}
      </p>
      <button type="button" aria-keyshortcuts="?" onClick={() => model.open('keys')}>
        Keys <KeyHint keys="?" />
      </button>
    </footer>
  );
}
