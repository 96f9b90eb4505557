import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { Unseen } from './Unseen.tsx';

/** The deduction that stands by, in the words in which it can be said. */
export function Chosen() {
  const { air, next } = useDesk();
  const deduction = air.standby.value?.deduction;
  return (
    <div class="chosen-deduction" aria-live="polite">
      {deduction === undefined ? (
        <p class="empty">
          Choose a deduction, and it stands by: previewed on the board, seen by nobody else.
        </p>
      ) : (
        <>
          <p>
            {deduction.sentence} <small>{Math.round(deduction.seconds)} s to say</small>
          </p>
          <Unseen deduction={deduction} />
          <div class="row">
            <button type="button" aria-keyshortcuts="U" onClick={() => next.markUsed()}>
              Said or used <KeyHint keys="U" />
            </button>
            <button type="button" onClick={() => next.standDown()}>
              Stand down
            </button>
          </div>
        </>
      )}
    </div>
  );
}
