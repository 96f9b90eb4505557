import type { AudienceDoor, DoorView } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { presentWords } from './words.ts';

const doors: readonly { door: AudienceDoor; words: string }[] = [
  { door: 'closed', words: 'Closed' },
  { door: 'byLink', words: 'By its link' },
  { door: 'open', words: 'Open to all' },
];

/** Who may open the audience's page, how many are there, and its link, which is copied and never shown. */
export function DoorPart({ view, isShut }: { view: DoorView; isShut: boolean }) {
  const { viewers } = useDesk();
  return (
    <fieldset class="door" disabled={isShut}>
      <legend>The audience's page</legend>
      <div class="row" role="radiogroup" aria-label="Who may open it">
        {doors.map(({ door, words }) => (
          <label key={door} class="check">
            <input
              type="radio"
              name="door"
              checked={view.door === door}
              onChange={() => viewers.setDoor(door)}
            />
            {words}
          </label>
        ))}
        <span class="push">{presentWords(view)}</span>
      </div>
      <div class="row">
        <button type="button" disabled={isShut} onClick={() => viewers.copyLink()}>
          Copy audience link
        </button>
        <span role="status">{viewers.copied.value ?? view.address}</span>
      </div>
      {!view.isForOthers && (
        <p class="hint">Only this machine is reached there: name an address for others in companion.json.</p>
      )}
    </fieldset>
  );
}
