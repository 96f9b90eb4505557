import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';

/** Opens and closes the run sheet. */
export function RunSheetButton() {
  const model = useDesk();
  const isOpen = model.settings.runSheet.value;
  return (
    <button
      type="button"
      aria-keyshortcuts="O"
      aria-expanded={isOpen}
      onClick={() => (isOpen ? model.settings.showRunSheet(false) : model.goToRunSheet())}
    >
      Run sheet <KeyHint keys="O" />
    </button>
  );
}
