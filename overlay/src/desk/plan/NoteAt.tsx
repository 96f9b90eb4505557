import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { StepLine } from '../../wirePlan.ts';
import { useDesk } from '../context.ts';
import { NoteField } from './NoteField.tsx';

/** What is noted at a step, and the way to change it. */
export function NoteAt({ step, note }: { step: StepLine; note: string }) {
  const { plan } = useDesk();
  const isWritten = useSignal(false);
  const goesBack = useRef(false);
  const change = useRef<HTMLButtonElement>(null);

  // Whoever was in the field stays at the step.
  useLayoutEffect(() => {
    if (goesBack.current) change.current?.focus();
    goesBack.current = false;
  }, [isWritten.value]);

  if (isWritten.value) {
    return (
      <NoteField
        label={`Note at step ${step.number}`}
        note={note}
        onKeep={(text) => plan.note(step, text)}
        onClose={(byKey) => {
          goesBack.current = byKey;
          isWritten.value = false;
        }}
      />
    );
  }
  return (
    <div class="row step-note">
      {note !== '' && <q>{note}</q>}
      <button
        ref={change}
        type="button"
        aria-label={note === '' ? `Note at step ${step.number}` : `Change the note at step ${step.number}`}
        onClick={() => {
          isWritten.value = true;
        }}
      >
        {note === '' ? 'Note' : 'Change'}
      </button>
    </div>
  );
}
