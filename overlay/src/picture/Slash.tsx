import type { Shape } from '../wirePicture.ts';
import { Edged } from './Edged.tsx';
import { Plate, PlateDigit, reach } from './Plate.tsx';

/** A candidate that goes: a slash through its plate and beyond it, behind the digit, which stays readable. */
export function Slash({ shape }: { shape: Extract<Shape, { kind: 'slash' }> }) {
  const { x, y, digit } = shape;
  const half = reach * 1.22;
  return (
    <g class="slash">
      <Plate x={x} y={y} isSquare />
      <Edged path={`M${x - half} ${y + half}L${x + half} ${y - half}`} colour="goes" width={0.05} />
      <PlateDigit x={x} y={y} digit={digit} />
    </g>
  );
}
