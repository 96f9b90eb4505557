import type { Shape } from '../wirePicture.ts';
import { fitted } from './dashes.ts';
import { Edged } from './Edged.tsx';
import { curve, curveLength, type Point } from './paths.ts';

const width = 0.06;
const dashes = { dash: 0.17, gap: 0.15 };

/** A link between two candidates: solid if strong, broken if weak. */
export function Link({ shape }: { shape: Extract<Shape, { kind: 'link' }> }) {
  const { x1, y1, x2, y2, bendX, bendY, isStrong } = shape;
  const course: [Point, Point, Point] = [
    { x: x1, y: y1 },
    { x: bendX, y: bendY },
    { x: x2, y: y2 },
  ];
  const path = curve(...course);
  return (
    <g class={isStrong ? 'link strong' : 'link weak'}>
      {isStrong ? (
        <Edged path={path} colour="link" width={width} />
      ) : (
        <Edged path={path} colour="link" width={width} dashes={fitted(dashes, curveLength(...course))} />
      )}
    </g>
  );
}
