import { drop } from '../grid/text.ts';
import type { Role } from '../palette/palette.ts';
import { ink, paint } from '../palette/variable.ts';
import type { Shape } from '../wirePicture.ts';
import { Edged } from './Edged.tsx';
import { edge } from './edges.ts';
import { rectangle } from './paths.ts';

/** In board units. */
const inset = 0.1;
const arm = 0.26;
const width = 0.06;
const plateHeight = 0.24;
const size = 0.21;
const letterWidth = 0.13;

/** A cell that viewers call: a bracket in each corner, and a plate with about their number at its foot. */
export function Called({ shape }: { shape: Extract<Shape, { kind: 'called' }> }) {
  const { x, y, count } = shape;
  const [left, right, top, bottom] = [x + inset, x + 1 - inset, y + inset, y + 1 - inset];
  const brackets = [
    `M${left + arm} ${top}H${left}V${top + arm}`,
    `M${right - arm} ${top}H${right}V${top + arm}`,
    `M${left + arm} ${bottom}H${left}V${bottom - arm}`,
    `M${right - arm} ${bottom}H${right}V${bottom - arm}`,
  ].join('');
  const wide = letterWidth * (count.length + 1);
  const layers: readonly [Role, number][] = [
    ['darkEdge', 2 * edge],
    ['lightEdge', edge],
    ['called', 0],
  ];
  return (
    <g class="called">
      <Edged path={brackets} colour="called" width={width} />
      {layers.map(([role, out]) => (
        <path
          key={role}
          d={rectangle(
            x + 0.5 - wide / 2 - out,
            bottom - plateHeight / 2 - out,
            wide + 2 * out,
            plateHeight + 2 * out,
          )}
          fill={paint(role)}
        />
      ))}
      <text x={x + 0.5} y={bottom + size * drop} font-size={size} fill={ink('called')}>
        {count}
      </text>
    </g>
  );
}
