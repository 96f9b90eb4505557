import type { Called } from '../../wire.ts';
import { calledWords } from './grades.ts';

/** The cells that viewers call, as they stand by or are on air. */
export function CalledNow({ called, isOnAir }: { called: Called; isOnAir: boolean }) {
  return (
    <div class="called-now">
      <h3>
        <small>{isOnAir ? 'On air:' : 'Stands by:'}</small> {calledWords(called)}
      </h3>
      <p>Which cells, and about how many viewers: no digit, and not who is right.</p>
    </div>
  );
}
