import { drop } from '../grid/text.ts';
import { ink, paint } from '../palette/variable.ts';
import { edge } from './edges.ts';
import { rectangle } from './paths.ts';

/** Reach of a candidate's plate from its centre, edges included: two neighbours do not touch. In board units. */
export const reach = 0.14;
/** The same for a square plate, whose corners reach further. */
const squareReach = 0.125;

const size = 0.235;

interface Place {
  x: number;
  y: number;
}

/** The plate of a candidate, so that its digit is read over any picture: round if it belongs to the pattern, square if it goes. */
export function Plate({ x, y, isSquare = false }: Place & { isSquare?: boolean }) {
  return (
    <g class="plate">
      {(['darkEdge', 'lightEdge'] as const).map((role, layer) => {
        const half = (isSquare ? squareReach : reach) - layer * edge;
        return isSquare ? (
          <path key={role} d={rectangle(x - half, y - half, 2 * half, 2 * half)} fill={paint(role)} />
        ) : (
          <circle key={role} cx={x} cy={y} r={half} fill={paint(role)} />
        );
      })}
    </g>
  );
}

/** The digit on a plate; an outline of the plate's own keeps it apart from what crosses the plate. */
export function PlateDigit({ x, y, digit }: Place & { digit: number }) {
  return (
    <text
      x={x}
      y={y + size * drop}
      font-size={size}
      fill={ink('lightEdge')}
      stroke={paint('lightEdge')}
      stroke-width={0.03}
      paint-order="stroke"
    >
      {digit}
    </text>
  );
}
