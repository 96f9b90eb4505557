import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { ways } from '../keys/keyList.ts';

/** What a digit key writes. */
export function Ways() {
  const { board } = useDesk();
  return (
    <fieldset class="ways" disabled={!board.mayEnter.value}>
      <legend class="unseen">Way of entry</legend>
      {ways.map(({ way, label, key }) => (
        <label key={way}>
          <input
            type="radio"
            name="way"
            checked={board.way.value === way}
            aria-keyshortcuts={key}
            onChange={() => board.choose(way)}
          />
          <span>
            {label} <KeyHint keys={key} />
          </span>
        </label>
      ))}
    </fieldset>
  );
}
