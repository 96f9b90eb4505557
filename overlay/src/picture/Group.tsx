import type { Shape } from '../wirePicture.ts';
import { Edged } from './Edged.tsx';
import { capsule } from './paths.ts';

const radius = 0.18;
const width = 0.04;

/** A group, which a link takes as one candidate: a rounded outline round its candidates. */
export function Group({ shape }: { shape: Extract<Shape, { kind: 'group' }> }) {
  const { x1, y1, x2, y2 } = shape;
  return (
    <g class="group">
      <Edged path={capsule({ x: x1, y: y1 }, { x: x2, y: y2 }, radius)} colour="link" width={width} />
    </g>
  );
}
