import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { digits } from '../../grid/cells.ts';
import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import { Steps } from './Steps.tsx';
import './why.css';

/** Asks why a digit is, or cannot be, in a cell: by its key or by its button. The answer is for the presenter alone. */
export function WhyDialog() {
  const model = useDesk();
  const { why } = model;
  const { cell, digit } = why.question.value ?? { cell: '', digit: null };
  const answer = why.answer.value;
  const row = useRef<HTMLDivElement>(null);

  // Digits are heard wherever the focus is, from the first moment on.
  useLayoutEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!/^[1-9]$/.test(event.key) || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      void why.ask(Number(event.key));
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [why]);

  // The dialog would give the focus to its button Close.
  useEffect(() => row.current?.querySelector('button')?.focus(), []);

  return (
    <Modal title={`Why? ${cell}`} class="why-dialog" onClose={() => model.close()}>
      <div class="why">
        <div class="row" role="group" aria-label="Digit" ref={row}>
          {digits.map((each) => (
            <button
              key={each}
              type="button"
              aria-pressed={each === digit}
              aria-label={`Why ${each} in ${cell}`}
              onClick={() => void why.ask(each)}
            >
              {each}
            </button>
          ))}
        </div>
        <p aria-live="polite">
          {why.refusal.value ||
            answer?.text ||
            (digit === null ? 'Choose the digit; the answer may tell the solution.' : 'Looking for a proof.')}
        </p>
        {answer && answer.steps.length > 0 && <Steps steps={answer.steps} />}
      </div>
    </Modal>
  );
}
