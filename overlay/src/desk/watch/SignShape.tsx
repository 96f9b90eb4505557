import { ink, paint } from '../../palette/variable.ts';
import type { Sign } from './kinds.ts';

const plates: Record<Sign, string> = {
  wrong: 'M7 1h10l6 6v10l-6 6H7l-6-6V7z',
  changed: 'M12 1l11 21H1z',
  overlooked: 'M12 1a11 11 0 0 1 0 22 11 11 0 0 1 0-22z',
};

const strokes: Record<Sign, string> = {
  wrong: 'M8 8l8 8M16 8l-8 8',
  changed: 'M12 8v7M12 18v1.5',
  overlooked: 'M12 6v7l4 3',
};

/** An octagon with a cross, a triangle with a stroke, or a disc with hands. */
export function SignShape({ sign }: { sign: Sign }) {
  const colour = sign === 'wrong' ? 'goes' : sign === 'changed' ? 'warning' : 'lookAt';
  return (
    <svg class="sign" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={plates[sign]} fill={paint(colour)} stroke={paint('darkEdge')} stroke-width="1.5" />
      <path d={strokes[sign]} fill="none" stroke={ink(colour)} stroke-width="2.5" />
    </svg>
  );
}
