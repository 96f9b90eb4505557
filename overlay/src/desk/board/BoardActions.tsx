import type { DeskView } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';

/** What is done to the grid as a whole. */
export function BoardActions({ desk }: { desk: DeskView }) {
  const model = useDesk();
  const { board } = model;
  const isShut = !board.mayEnter.value;
  return (
    <div class="row">
      <button
        type="button"
        disabled={isShut || desk.undo === null}
        title={desk.undo === null ? 'Nothing to undo' : `Takes back: ${desk.undo}`}
        aria-keyshortcuts="Control+Z"
        onClick={() => board.undo()}
      >
        Undo
      </button>
      <button
        type="button"
        disabled={isShut || desk.redo === null}
        title={desk.redo === null ? 'Nothing to redo' : `Makes again: ${desk.redo}`}
        aria-keyshortcuts="Control+Y"
        onClick={() => board.redo()}
      >
        Redo
      </button>
      <button type="button" disabled={isShut} aria-keyshortcuts="Y" onClick={() => model.askWhy()}>
        Why … <KeyHint keys="Y" />
      </button>
      <button type="button" disabled={isShut} onClick={() => model.open('clear')}>
        Clear grid
      </button>
      <button type="button" disabled={isShut} aria-keyshortcuts="L" onClick={() => model.open('load')}>
        Load <KeyHint keys="L" />
      </button>
    </div>
  );
}
