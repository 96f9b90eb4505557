import { useState } from 'preact/hooks';
import type { ChaptersView } from '../../wireShows.ts';
import { useDesk } from '../context.ts';

/** Corrects a recording's key that was pressed late or early. */
export function OffsetPart({ view }: { view: ChaptersView }) {
  const { shows } = useDesk();
  const [typed, type] = useState(String(view.offset));
  const seconds = Number(typed);
  const set = (event: Event) => {
    event.preventDefault();
    if (typed.trim() !== '' && Number.isFinite(seconds)) shows.setOffset(view.show, seconds);
  };
  return (
    <form class="row" onSubmit={set}>
      <label>
        In the video everything comes{' '}
        <input
          type="number"
          step="0.1"
          required
          class="time"
          value={typed}
          onInput={(event) => type(event.currentTarget.value)}
        />{' '}
        seconds later than keyed
      </label>
      <button type="submit" disabled={typed === String(view.offset)}>
        Correct
      </button>
    </form>
  );
}
