import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';

/** Opens the list of shows. */
export function ShowsButton() {
  const model = useDesk();
  return (
    <button type="button" aria-keyshortcuts="S" onClick={() => model.openShows()}>
      Shows <KeyHint keys="S" />
    </button>
  );
}
