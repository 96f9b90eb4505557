import { useSignal } from '@preact/signals';
import type { PointLine, StepLine } from '../../wirePlan.ts';
import { useDesk } from '../context.ts';
import { clock } from './clock.ts';
import { PlanMark } from './PlanMark.tsx';

interface Props {
  step: StepLine;
  note: string;
  points: readonly PointLine[];
  isNow: boolean;
}

/** A step of the way, and what is to be said at it. */
export function StepRow({ step, note, points, isNow }: Props) {
  return (
    <li value={step.number} aria-current={isNow ? 'step' : undefined}>
      <div class="row" title={step.text}>
        <time>{clock(step.at)}</time>
        {isNow && <PlanMark mark="now" />}
        {step.isFeatured && <PlanMark mark="featured" />}
        {step.isGate && <PlanMark mark="gate" />}
        <span class="short">{step.short}</span>
        <Note step={step} note={note} />
      </div>
      {points.map(({ text }) => (
        <p class="point" key={text}>
          {text}
        </p>
      ))}
    </li>
  );
}

function Note({ step, note }: { step: StepLine; note: string }) {
  const { plan } = useDesk();
  const isWritten = useSignal(false);
  const label = `Note at step ${step.number}`;
  if (!isWritten.value) {
    return (
      <div class="row step-note">
        {note !== '' && <q>{note}</q>}
        <button
          type="button"
          aria-label={note === '' ? label : `Change the note at step ${step.number}`}
          onClick={() => {
            isWritten.value = true;
          }}
        >
          {note === '' ? 'Note' : 'Change'}
        </button>
      </div>
    );
  }
  const keep = (event: SubmitEvent) => {
    event.preventDefault();
    plan.note(step, String(new FormData(event.currentTarget as HTMLFormElement).get('note') ?? ''));
    isWritten.value = false;
  };
  return (
    <form class="row step-note" onSubmit={keep}>
      <input
        name="note"
        aria-label={label}
        autocomplete="off"
        maxLength={400}
        defaultValue={note}
        ref={(field) => field?.focus()}
      />
      <button type="submit">Keep</button>
    </form>
  );
}
