import { drop } from '../grid/text.ts';
import type { Role } from '../palette/palette.ts';
import { ink, paint } from '../palette/variable.ts';
import { edge } from './edges.ts';
import { rectangle } from './paths.ts';

/** Half the width of the tab with its edges, in board units. */
const half = 0.155;
const size = 0.215;

interface Props {
  /** Top left corner of the cell. */
  x: number;
  y: number;
  colour: Role;
  isRound: boolean;
  letter: string;
}

/**
 * A plate with the letter of the cell's role. It stands on the cell's top left corner, between the candidates of the four cells that
 * meet there.
 */
export function Tab({ x, y, colour, isRound, letter }: Props) {
  const layers: readonly [Role, number][] = [
    ['darkEdge', half],
    ['lightEdge', half - edge],
    [colour, half - 2 * edge],
  ];
  return (
    <g class="tab">
      {layers.map(([role, reach]) =>
        isRound ? (
          <circle key={role} cx={x} cy={y} r={reach} fill={paint(role)} />
        ) : (
          <path key={role} d={rectangle(x - reach, y - reach, 2 * reach, 2 * reach)} fill={paint(role)} />
        ),
      )}
      <text x={x} y={y + size * drop} font-size={size} fill={ink(colour)}>
        {letter}
      </text>
    </g>
  );
}
