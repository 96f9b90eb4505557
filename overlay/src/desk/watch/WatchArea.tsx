import type { WatchNote } from '../../wire.ts';
import { Area } from '../Area.tsx';
import { Note } from './Note.tsx';
import './watch.css';

/** Warnings, for the desk alone; none of them gives the answer away. */
export function WatchArea({ notes }: { notes: readonly WatchNote[] }) {
  return (
    <Area
      name="Watch"
      class="watch-area"
      aside={<p class="count">{notes.length === 0 ? 'all well' : notes.length}</p>}
    >
      {notes.length === 0 && <p class="empty">Nothing to warn of.</p>}
      <ul class="notes" aria-live="polite" aria-relevant="additions">
        {notes.map((note) => (
          <Note key={`${note.kind} ${note.cells.join(' ')} ${note.text}`} note={note} />
        ))}
      </ul>
    </Area>
  );
}
