import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';

/** Opens the run sheet. */
export function RunSheetButton() {
  const model = useDesk();
  return (
    <button type="button" aria-keyshortcuts="O" onClick={() => model.open('runSheet')}>
      Run sheet <KeyHint keys="O" />
    </button>
  );
}
