import { useState } from 'preact/hooks';
import { useDesk } from '../context.ts';

/** Begins another show, once it is confirmed. */
export function NewShow() {
  const model = useDesk();
  const [title, type] = useState('');
  const [isAsking, ask] = useState(false);
  const desk = model.desk.value;
  const begin = (event: Event) => {
    event.preventDefault();
    if (!isAsking) return ask(true);
    ask(false);
    type('');
    void model.shows.begin(title);
  };
  return (
    <form class="new-show" onSubmit={begin}>
      <div class="row">
        <label>
          New show{' '}
          <input
            name="title"
            maxLength={120}
            placeholder="Title, may be empty"
            value={title}
            onInput={(event) => type(event.currentTarget.value)}
          />
        </label>
        {!isAsking && <button type="submit">Begin …</button>}
      </div>
      {isAsking ? (
        <div class="row confirm">
          <p>
            The board becomes empty and nothing stays on air; the audience's page is closed
            {desk?.recording.phase === 'running' && ', and the recording counts as stopped'}. This show is
            kept, and undo does not reach back into it.
          </p>
          <button type="submit" class="main">
            Begin the new show
          </button>
          <button type="button" onClick={() => ask(false)}>
            Leave it
          </button>
        </div>
      ) : (
        desk?.isOver && <p class="hint">This show was ended: the next puzzle begins another one.</p>
      )}
    </form>
  );
}
