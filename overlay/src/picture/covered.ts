import { cellAt } from '../grid/cells.ts';
import type { Shape } from '../wirePicture.ts';

/** Cells over which a lozenge lies: marks that look out from under its corners would be read with its digit. */
export function coveredBy(shapes: readonly Shape[]): ReadonlySet<number> {
  return new Set(
    shapes.flatMap((shape) =>
      shape.kind === 'lozenge' ? [cellAt(Math.floor(shape.y), Math.floor(shape.x))] : [],
    ),
  );
}
