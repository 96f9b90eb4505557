import { CreditBar } from './CreditBar.tsx';
import { connectionWords } from './connectionWords.ts';
import { useDesk } from './context.ts';
import { KeyHint } from './KeyHint.tsx';
import { RunSheetButton } from './plan/RunSheetButton.tsx';
import { Sign } from './Sign.tsx';
import { ScreenSign } from './screen/ScreenSign.tsx';
import { RecordingPart } from './shows/RecordingPart.tsx';
import { ShowsButton } from './shows/ShowsButton.tsx';

/** The foot of the desk: the connection, the chat, and why the last thing asked for was not done. */
export function StatusLine() {
  const model = useDesk();
  const { state, refusal, waiting } = model.line;
  const desk = model.desk.value;
  return (
    <footer class="status">
      <Sign name="connection" isUp={state.value === 'connected'}>
        {connectionWords(state.value, waiting.value)}
      </Sign>
      {desk?.chat && (
        <Sign name="chat" isUp={desk.chat.phase === 'connected'}>
          {desk.chat.text}
        </Sign>
      )}
      {desk && <RecordingPart recording={desk.recording} />}
      {desk && <CreditBar credit={desk.credit} />}
      <p class="said" role="status">
        {refusal.value || model.asking.said.value}
      </p>
      {desk?.role === 'presenter' && <ShowsButton />}
      <ScreenSign />
      {desk && <RunSheetButton />}
      <button type="button" aria-keyshortcuts="?" onClick={() => model.open('keys')}>
        Keys <KeyHint keys="?" />
      </button>
    </footer>
  );
}
