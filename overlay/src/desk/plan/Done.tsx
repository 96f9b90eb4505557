import type { DoneLine } from '../../wirePlan.ts';
import { clock } from './clock.ts';
import { PlanMark } from './PlanMark.tsx';

/** The steps done on this puzzle, folded away. Numbers and clock go on from here to the way ahead. */
export function Done({ done }: { done: readonly DoneLine[] }) {
  const last = done.at(-1)?.last;
  if (last === undefined) return null;
  const noted = done.filter(({ notes }) => notes.length > 0).length;
  return (
    <details class="done-steps">
      <summary data-stop>
        <PlanMark mark="done" />
        <b>{last === 1 ? '1 step' : `${last} steps`}</b>
        {noted > 0 && <small>{noted === 1 ? '1 with a note' : `${noted} with notes`}</small>}
      </summary>
      <ol>
        {done.map((line) => (
          <li class="step" key={line.first}>
            <DoneStep line={line} />
          </li>
        ))}
      </ol>
    </details>
  );
}

function DoneStep({ line: { first, last, begins, text, at, how, notes } }: { line: DoneLine }) {
  return (
    <div class="step-line">
      <span class="number">{first === last ? first : `${first}–${last}`}</span>
      <time>{clock(begins)}</time>
      <span class="what">
        <span class="short">
          {text} {how !== '' && <small>{how}</small>} {at !== null && <small>at {timeOfDay(at)}</small>}
        </span>
        {notes.map((note) => (
          <q key={note}>{note}</q>
        ))}
      </span>
    </div>
  );
}

function timeOfDay(at: string): string {
  const time = new Date(at);
  return [time.getHours(), time.getMinutes()].map((part) => String(part).padStart(2, '0')).join(':');
}
