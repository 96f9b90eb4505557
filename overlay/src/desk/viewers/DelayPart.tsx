import { useState } from 'preact/hooks';
import type { ViewersView } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { measuredWords } from './words.ts';

interface Props {
  view: ViewersView;
  isShut: boolean;
}

/** How far viewers are behind: as it is set, and as they let it be measured. */
export function DelayPart({ view, isShut }: Props) {
  const { viewers } = useDesk();
  const [typed, type] = useState<string | null>(null);
  const { delay, code, measured } = view;
  const set = (event: Event) => {
    event.preventDefault();
    const seconds = Number(typed ?? delay.seconds);
    if (Number.isInteger(seconds)) viewers.setDelay(seconds);
    type(null);
  };
  return (
    <fieldset class="delay" disabled={isShut}>
      <legend>How far behind they are</legend>
      <form class="row" onSubmit={set}>
        <label>
          Answers are about the board of{' '}
          <input
            type="number"
            min={0}
            max={60}
            required
            value={typed ?? delay.seconds}
            onInput={(event) => type(event.currentTarget.value)}
          />{' '}
          seconds ago
        </label>
        <button type="submit" disabled={isShut || typed === null}>
          Set
        </button>
      </form>
      <div class="row">
        <button
          type="button"
          disabled={isShut}
          aria-pressed={code !== null}
          onClick={() => viewers.toggleCode()}
        >
          {code === null ? 'Show a code' : 'Hide the code'}
        </button>
        {code !== null && (
          <span>
            <code>{code}</code> is on the overlay
          </span>
        )}
      </div>
      <div class="row" role="status">
        <span>{measuredWords(measured, view.measuredViewers)}</span>
        {measured && (
          <button
            type="button"
            class="main push"
            disabled={isShut}
            onClick={() => viewers.useMeasuredDelay()}
          >
            Use {measured.seconds} s
          </button>
        )}
      </div>
    </fieldset>
  );
}
