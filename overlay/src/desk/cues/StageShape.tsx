import type { CueStage } from '../../wire.ts';

const lines: Record<CueStage, string> = {
  listed: 'M6 2.5a3.5 3.5 0 1 0 .01 0z',
  standBy: 'M3 1.5l7 4.5-7 4.5z',
  go: 'M3 1.5l7 4.5-7 4.5z',
  done: 'M2 6.5l3 3 5-7',
};

/** The stage as a shape: a ring, an empty arrow, a filled one, a tick. Its words stand beside it. */
export function StageShape({ stage }: { stage: CueStage }) {
  return (
    <svg class="stage-shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">
      <path d={lines[stage]} fill={stage === 'go' ? 'currentColor' : 'none'} />
    </svg>
  );
}
