import type { WatchNote } from '../../wire.ts';
import type { EntryProof } from '../../wireProofs.ts';
import { Area } from '../Area.tsx';
import { ProofLine } from '../why/ProofLine.tsx';
import { Note } from './Note.tsx';
import './watch.css';

interface Props {
  notes: readonly WatchNote[];
  proof: EntryProof | null;
}

/** How the last entry follows, and warnings; for the desk alone. No warning gives the answer away. */
export function WatchArea({ notes, proof }: Props) {
  return (
    <Area
      name="Watch"
      class="watch-area"
      aside={<p class="count">{notes.length === 0 ? 'all well' : notes.length}</p>}
    >
      {proof && <ProofLine proof={proof} />}
      {notes.length === 0 && <p class="empty">Nothing to warn of.</p>}
      <ul class="notes" aria-live="polite" aria-relevant="additions">
        {notes.map((note) => (
          <Note key={`${note.kind} ${note.cells.join(' ')} ${note.text}`} note={note} />
        ))}
      </ul>
    </Area>
  );
}
