import type { StepNote } from '../../wirePlan.ts';
import { useDesk } from '../context.ts';

/** Notes whose step is not on the way any more, so that nothing written is lost from sight. */
export function KeptNotes({ kept }: { kept: readonly StepNote[] }) {
  const { plan } = useDesk();
  if (kept.length === 0) return null;
  return (
    <section class="kept-notes">
      <h3>Kept notes: their steps are not on the way from here</h3>
      <ul>
        {kept.map((note) => {
          const step = stepOf(note);
          return (
            <li class="row" key={step}>
              <span>{step}</span>
              <q>{note.text}</q>
              <button
                type="button"
                aria-label={`Take away the note at ${step}`}
                onClick={() => plan.note(note, '')}
              >
                Take away
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function stepOf({ places, removes }: StepNote): string {
  const all = [
    ...places.map(({ cell, digit }) => `${digit} in ${cell}`),
    ...removes.map(({ cell, digit }) => `no ${digit} in ${cell}`),
  ];
  return all.join(', ');
}
