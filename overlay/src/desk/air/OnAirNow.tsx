import type { Cue } from '../../wire.ts';
import { grades } from './grades.ts';
import { Mirror } from './Mirror.tsx';

/** What the audience sees now: the drawing, small, and the words of the caption. */
export function OnAirNow({ onAir }: { onAir: Cue | null }) {
  const grade = grades.find((each) => each.grade === onAir?.grade);
  return (
    <div class="on-air-now">
      <Mirror onAir={onAir} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: long words are scrolled by the keyboard too */}
      <section class="words-now" aria-label="Words on air" tabIndex={0}>
        {onAir && grade ? (
          <>
            <h3>{onAir.deduction.name}</h3>
            <p class="grade-now">
              Grade {grade.grade} of 4: <b>{grade.name}</b>
            </p>
            <p>{onAir.picture.caption}</p>
          </>
        ) : (
          <p class="empty">The audience sees nothing of ours.</p>
        )}
      </section>
    </div>
  );
}
