import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { PointLine, StepLine } from '../../wirePlan.ts';
import { clock } from './clock.ts';
import { NoteAt } from './NoteAt.tsx';
import { PlanMark } from './PlanMark.tsx';

interface Props {
  step: StepLine;
  note: string;
  points: readonly PointLine[];
  isNow: boolean;
}

/** A step of the way: what to say at the one that comes now, and at others when asked. */
export function StepRow({ step, note, points, isNow }: Props) {
  // Null for as it comes: open while it is the one that comes now.
  const asked = useSignal<boolean | null>(null);
  const isOpen = asked.value ?? isNow;
  const said = useId();
  return (
    <li class="step" aria-current={isNow ? 'step' : undefined}>
      <button
        type="button"
        class="step-line"
        data-stop
        aria-expanded={isOpen}
        aria-controls={isOpen ? said : undefined}
        onClick={() => {
          asked.value = !isOpen;
        }}
      >
        <span class="number">{step.number}</span>
        <time>{clock(step.at)}</time>
        <span class="what">
          {step.isFeatured && <PlanMark mark="featured" />}
          {step.isGate && <PlanMark mark="gate" />}
          <span class="short">{step.short}</span>
        </span>
      </button>
      {isOpen && (
        <p class="say" id={said}>
          {step.text}
        </p>
      )}
      {points.map(({ text }) => (
        <p class="point" key={text}>
          {text}
        </p>
      ))}
      {(isOpen || note !== '') && <NoteAt step={step} note={note} />}
    </li>
  );
}
