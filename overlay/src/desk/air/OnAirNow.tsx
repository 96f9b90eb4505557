import type { Called, Cue } from '../../wire.ts';
import { calledWords, grades } from './grades.ts';
import { Mirror } from './Mirror.tsx';

interface Props {
  onAir: Cue | null;
  /** The cells that viewers call, where they are on air instead. */
  called: Called | null;
}

/** What the audience sees now: the drawing, small, and the words of the caption. */
export function OnAirNow({ onAir, called }: Props) {
  const picture = onAir?.picture ?? called?.picture ?? null;
  return (
    <div class="on-air-now">
      <Mirror picture={picture} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: long words are scrolled by the keyboard too */}
      <section class="words-now" aria-label="Words on air" tabIndex={0}>
        {onAir && <CueHead onAir={onAir} />}
        {called && <h3>{calledWords(called)}</h3>}
        {picture ? <p>{picture.caption}</p> : <p class="empty">The audience sees nothing of ours.</p>}
      </section>
    </div>
  );
}

function CueHead({ onAir }: { onAir: Cue }) {
  const name = grades.find((each) => each.grade === onAir.grade)?.name;
  return (
    <>
      <h3>{onAir.deduction.name}</h3>
      <p class="grade-now">
        Grade {onAir.grade} of 4: <b>{name}</b>
      </p>
    </>
  );
}
