import type { Shape } from '../wirePicture.ts';
import { Plate, PlateDigit } from './Plate.tsx';

/** A candidate of the pattern. */
export function Mark({ shape }: { shape: Extract<Shape, { kind: 'mark' }> }) {
  return (
    <g class="mark">
      <Plate x={shape.x} y={shape.y} />
      <PlateDigit x={shape.x} y={shape.y} digit={shape.digit} />
    </g>
  );
}
