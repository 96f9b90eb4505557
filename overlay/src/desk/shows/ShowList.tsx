import { useState } from 'preact/hooks';
import { timeText } from '../../grid/time.ts';
import type { ShowLine } from '../../wireShows.ts';
import { useDesk } from '../context.ts';

const day = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

/** The kept shows, the newest first. */
export function ShowList({ shows }: { shows: readonly ShowLine[] }) {
  const model = useDesk();
  const [asked, ask] = useState<number | null>(null);
  const send = (event: Event) => {
    const field = event.currentTarget as HTMLInputElement;
    const file = field.files?.[0];
    if (file) void model.shows.importShow(file);
    field.value = '';
  };
  return (
    <>
      <ul class="shows">
        {[...shows].reverse().map((show) => (
          <li key={show.id}>
            <ShowHead show={show} isOver={model.desk.value?.isOver ?? false} />
            <div class="row">
              <button type="button" onClick={() => model.shows.openChapters(show.id)}>
                Chapters
              </button>
              <a href={`/stage?show=${show.id}&by=presenter`} target="_blank" rel="noreferrer">
                Replay
              </a>
              <button type="button" onClick={() => model.shows.exportShow(show.id)}>
                Export
              </button>
              {!show.isLive && asked !== show.id && (
                <button type="button" onClick={() => ask(show.id)}>
                  Go on with it …
                </button>
              )}
            </div>
            {asked === show.id && (
              <div class="row confirm">
                <p>
                  The show that goes on now is kept, and this one goes on where it was, with nothing on air
                  and the audience's page closed.
                </p>
                <button
                  type="button"
                  class="main"
                  onClick={() => {
                    ask(null);
                    void model.shows.reopen(show.id);
                  }}
                >
                  Go on with show {show.id}
                </button>
                <button type="button" onClick={() => ask(null)}>
                  Leave it
                </button>
              </div>
            )}
          </li>
        ))}
      </ul>
      <label class="import">
        Import a show file <input type="file" accept=".json,application/json" onChange={send} />
      </label>
      <p class="hint">
        An exported show holds every entry and mistake, notes, call-outs and times; of viewers only about how
        many found a cell first.
      </p>
    </>
  );
}

/** `isOver`: whether the show of the session was ended. */
function ShowHead({ show, isOver }: { show: ShowLine; isOver: boolean }) {
  const live = isOver ? ' · ended' : ' · goes on now';
  const kind = show.isLive ? live : show.isImported ? ' · imported' : '';
  const others = show.puzzles.filter((title) => title !== show.title);
  return (
    <div class="show-head">
      <strong>
        {show.id}. {show.title || 'Untitled'}
      </strong>
      {others.length > 0 && <span> {others.join(', ')}</span>}
      <small>
        {day.format(new Date(show.began))} · {timeText(show.seconds)} ·{' '}
        {show.entries === 1 ? '1 entry' : `${show.entries} entries`}
        {kind} · <code title={show.hash}>{show.hash.slice(0, 8)}</code>
      </small>
    </div>
  );
}
