import { useDesk } from '../context.ts';
import { CueIt } from '../cues/CueIt.tsx';
import { KeyHint } from '../KeyHint.tsx';
import { Unseen } from './Unseen.tsx';

/** The deduction that is chosen, in the words in which it can be said. */
export function Chosen() {
  const { air, next } = useDesk();
  const deduction = next.deduction.value;
  const isShut = !air.mayAir.value;
  return (
    <div class="chosen-deduction" aria-live="polite">
      {deduction === null ? (
        <p class="empty">
          {air.isPresenter.value
            ? 'Choose a deduction, and it stands by: previewed on the board, seen by nobody else.'
            : 'Choose a deduction to read how it is said; nobody else sees what you look at.'}
        </p>
      ) : (
        <>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: long words are scrolled by the keyboard too */}
          <section class="chosen-words" aria-label="How it is said" tabIndex={0}>
            <p>
              {deduction.sentence} <small>{Math.round(deduction.seconds)} s to say</small>
            </p>
            <Unseen deduction={deduction} />
            {deduction.assumesOneSolution && <p>Rests on the puzzle having a single solution.</p>}
          </section>
          <div class="row chosen-tools">
            <CueIt deduction={deduction.id} />
            <button type="button" disabled={isShut} aria-keyshortcuts="U" onClick={() => next.markUsed()}>
              Said or used <KeyHint keys="U" />
            </button>
            {air.standby.value?.deduction.id === deduction.id ? (
              <button type="button" disabled={isShut} onClick={() => next.standDown()}>
                Stand down
              </button>
            ) : (
              <button type="button" disabled={isShut} onClick={() => void next.standBy(deduction.id)}>
                Stand by
              </button>
            )}
          </div>
        </>
      )}
    </div>
  );
}
