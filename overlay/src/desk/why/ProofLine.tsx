import type { EntryProof } from '../../wireProofs.ts';
import { Steps } from './Steps.tsx';
import './why.css';

/** How the last entry follows, in one line that opens to the steps. */
export function ProofLine({ proof }: { proof: EntryProof }) {
  const { entry, kind, text, steps } = proof;
  const line = (
    <>
      <b>{entry}</b> {text}
    </>
  );
  if (steps.length === 0) return <p class={`proof ${kind}`}>{line}</p>;
  return (
    // Another entry begins closed.
    <details key={entry} class={`proof ${kind}`}>
      <summary>{line}</summary>
      <Steps steps={steps} />
    </details>
  );
}
