import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';

/** Opens the ladder. */
export function LadderButton() {
  const model = useDesk();
  return (
    <button type="button" aria-keyshortcuts="R" onClick={() => model.open('ladder')}>
      Ladder <KeyHint keys="R" />
    </button>
  );
}
