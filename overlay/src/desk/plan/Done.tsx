import type { DoneLine } from '../../wirePlan.ts';
import { PlanMark } from './PlanMark.tsx';

/** The steps done on this puzzle, folded away. */
export function Done({ done }: { done: readonly DoneLine[] }) {
  if (done.length === 0) return null;
  const noted = done.filter(({ notes }) => notes.length > 0).length;
  return (
    <details class="done-steps">
      <summary>
        <PlanMark mark="done" />
        <b>{done.length === 1 ? '1 step' : `${done.length} steps`}</b>
        {noted > 0 && <small>{noted === 1 ? '1 with a note' : `${noted} with notes`}</small>}
      </summary>
      <ol>
        {done.map(({ text, at, how, notes }, place) => (
          <li key={place}>
            <div class="row">
              {at === null ? <time /> : <time dateTime={at}>{timeOfDay(at)}</time>}
              <span class="short">
                {text} {how !== '' && <small>{how}</small>}
              </span>
              {notes.map((note) => (
                <q key={note}>{note}</q>
              ))}
            </div>
          </li>
        ))}
      </ol>
    </details>
  );
}

function timeOfDay(at: string): string {
  const time = new Date(at);
  return [time.getHours(), time.getMinutes()].map((part) => String(part).padStart(2, '0')).join(':');
}
