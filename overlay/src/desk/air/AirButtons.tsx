import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { backWords, nextWords } from './grades.ts';

/** The three things that change what the audience sees. */
export function AirButtons() {
  const { air } = useDesk();
  const onAir = air.onAir.value;
  const next = nextWords(onAir, air.upcoming.value, air.calledStandby.value);
  const back = backWords(onAir, air.calledOnAir.value);
  const isShut = !air.mayAir.value;
  return (
    <div class="row air-buttons">
      <button
        type="button"
        class="main"
        disabled={isShut || next === null}
        aria-keyshortcuts="N"
        onClick={() => air.next()}
      >
        {next ?? 'Next grade'} <KeyHint keys="N" />
      </button>
      <button
        type="button"
        disabled={isShut || back === null}
        title={back ?? 'Nothing is on air'}
        aria-keyshortcuts="P"
        onClick={() => air.back()}
      >
        Back <KeyHint keys="P" />
      </button>
      <button type="button" disabled={isShut} aria-keyshortcuts="Escape" onClick={() => air.clear()}>
        Clear <KeyHint keys="Esc" />
      </button>
    </div>
  );
}
