import { useId } from 'preact/hooks';
import { paint } from '../palette/variable.ts';
import type { Shape } from '../wirePicture.ts';
import { brokenRectangle } from './dashes.ts';
import { Edged } from './Edged.tsx';
import { rectangle } from './paths.ts';

const width = 0.06;
const dashes = { dash: 0.32, gap: 0.18 };
const spacing = 0.3;
/** The outline leaves room for the frames of cells. In board units. */
const outside = 0.05;

/** A house or chute to look at: a dashed outline and light hatching, through which the digits below stay readable. */
export function House({ shape }: { shape: Extract<Shape, { kind: 'house' }> }) {
  const hatching = useId();
  const { x, y, width: wide, height: high } = shape;
  const outline = brokenRectangle(
    x - outside,
    y - outside,
    wide + 2 * outside,
    high + 2 * outside,
    dashes,
    width,
  );
  return (
    <g class="house">
      <pattern
        id={hatching}
        width={spacing}
        height={spacing}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d={`M0.03 0V${spacing}`} stroke={paint('lookAt')} stroke-width="0.035" stroke-opacity="0.75" />
        <path
          d={`M0.055 0V${spacing}`}
          stroke={paint('darkEdge')}
          stroke-width="0.015"
          stroke-opacity="0.5"
        />
      </pattern>
      <path d={rectangle(x, y, wide, high)} fill={`url(#${hatching})`} />
      <Edged path={outline} colour="lookAt" width={width} />
    </g>
  );
}
