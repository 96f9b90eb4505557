import type { WatchNote } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { began, kinds } from './kinds.ts';
import { SignShape } from './SignShape.tsx';

/** One warning; while it has the focus or the pointer, its cells show on the board. */
export function Note({ note }: { note: WatchNote }) {
  const { board } = useDesk();
  const { name, sign } = kinds[note.kind];
  const point = () => board.pointAt(note.cells);
  const leave = () => board.pointAt([]);
  return (
    <li>
      <button
        type="button"
        class="note"
        onClick={point}
        onFocus={point}
        onBlur={leave}
        onPointerEnter={point}
        onPointerLeave={leave}
      >
        <SignShape sign={sign} />
        <span class="words">
          <b>{name}</b> {note.text}
          <small>
            {note.cells.length > 0 && <>{note.cells.join(' ')} · </>}
            {note.since === null ? (
              began(note.entries)
            ) : (
              <time dateTime={note.since}>{began(note.entries)}</time>
            )}
          </small>
        </span>
      </button>
    </li>
  );
}
