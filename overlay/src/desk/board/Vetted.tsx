import type { Correction, VetResult } from '../../wirePlan.ts';

/** The likeliest; where there are more, the grid has hardly any digits. */
const mostCorrections = 12;

interface Props {
  result: VetResult;
  onCorrect: (correction: Correction) => void;
}

/** What vetting found out, with a button for each change of one cell that would make a puzzle of the grid. */
export function Vetted({ result, onCorrect }: Props) {
  const { faults, sentences, corrections } = result;
  return (
    <>
      <h3>{faults.length === 0 ? '✓ A sound puzzle' : '✗ No sound puzzle'}</h3>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {corrections.length > 0 && (
        <div class="row corrections" role="group" aria-label="Correct one cell">
          {corrections.slice(0, mostCorrections).map((correction) => (
            <button
              type="button"
              key={`${correction.cell} ${correction.to}`}
              onClick={() => onCorrect(correction)}
            >
              {words(correction)}
            </button>
          ))}
        </div>
      )}
    </>
  );
}

function words({ cell, from, to }: Correction): string {
  if (to === null) return `Take ${from} out of ${cell}`;
  return from === null ? `Write ${to} into ${cell}` : `Make ${cell} ${to}`;
}
