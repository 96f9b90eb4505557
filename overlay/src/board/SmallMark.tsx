import { candidatePlace } from '../grid/candidatePlace.ts';
import { drop } from '../grid/text.ts';
import type { SmallDigit } from './marks.ts';

/** In board units. */
const size = 0.25;
const half = 0.1;

interface Props {
  mark: SmallDigit;
  /** Top left corner of the cell. */
  x: number;
  y: number;
}

/** A small digit in its place: a block mark with a bar over it, a struck candidate with a stroke through it. */
export function SmallMark({ mark: { digit, kind, isStruck }, x, y }: Props) {
  const at = candidatePlace(x, y, digit);
  return (
    <g class={`mark ${kind}`}>
      <text x={at.x} y={at.y + size * drop} font-size={size}>
        {digit}
      </text>
      {kind === 'block' && (
        <path class="bar" d={`M${at.x - half * 0.8} ${at.y - size * drop - 0.04}h${half * 1.6}`} />
      )}
      {isStruck && <path class="strike" d={`M${at.x - half} ${at.y + half}l${2 * half} ${-2 * half}`} />}
    </g>
  );
}
