import type { ProofStep } from '../../wireProofs.ts';

/** The steps of a proof in the order in which they are said. */
export function Steps({ steps }: { steps: readonly ProofStep[] }) {
  return (
    <ol class="steps">
      {steps.map(({ name, short, sentence }) => (
        <li key={short} title={name}>
          <b>{short}</b>
          <span>{sentence}</span>
        </li>
      ))}
    </ol>
  );
}
