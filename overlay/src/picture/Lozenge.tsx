import { drop } from '../grid/text.ts';
import { ink, paint } from '../palette/variable.ts';
import type { Shape } from '../wirePicture.ts';
import { edge } from './edges.ts';
import { lozenge } from './paths.ts';

const reach = 0.45;
const size = 0.46;

/** A digit that follows: a filled lozenge over its cell with the digit on it. */
export function Lozenge({ shape }: { shape: Extract<Shape, { kind: 'lozenge' }> }) {
  const { x, y, digit } = shape;
  // An edge along a slope is as wide as one along a side only if the corners lie further apart.
  const step = edge * Math.SQRT2;
  return (
    <g class="lozenge">
      <path d={lozenge(x, y, reach)} fill={paint('darkEdge')} />
      <path d={lozenge(x, y, reach - step)} fill={paint('lightEdge')} />
      <path d={lozenge(x, y, reach - 2 * step)} fill={paint('follows')} />
      <text x={x} y={y + size * drop} font-size={size} fill={ink('follows')}>
        {digit}
      </text>
    </g>
  );
}
