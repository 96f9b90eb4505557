import type { OpenDeduction } from '../../wire.ts';
import { useDesk } from '../context.ts';

/** Says what a deduction rests on that no viewer can see, and offers the missing step first. */
export function Unseen({ deduction: { unseen, first, firstName } }: { deduction: OpenDeduction }) {
  const { next } = useDesk();
  if (unseen.length === 0) return null;
  const candidates =
    unseen.length === 1 ? '1 candidate that viewers' : `${unseen.length} candidates that viewers`;
  return (
    <div class="unseen-note">
      <p>
        Rests on {candidates} cannot see to be gone:{' '}
        {unseen.map(({ cell, digit }) => `${digit} in ${cell}`).join(', ')}.
      </p>
      {first !== null && (
        <button type="button" onClick={() => next.choose(first)}>
          Show first: {firstName}
        </button>
      )}
    </div>
  );
}
