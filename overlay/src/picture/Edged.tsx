import type { Role } from '../palette/palette.ts';
import { paint } from '../palette/variable.ts';
import { type Dashes, strokeDashes } from './dashes.ts';
import { layersOf } from './edges.ts';

interface Props {
  /** The path, in board units. */
  path: string;
  colour: Role;
  /** Of the coloured line, in board units. */
  width: number;
  /** For a broken line. */
  dashes?: Dashes;
}

/** A line with a dark and a light edge. */
export function Edged({ path, colour, width, dashes }: Props) {
  return (
    <g fill="none" stroke-linecap="square" {...(dashes && strokeDashes(dashes, width))}>
      {layersOf(colour, width).map((layer) => (
        <path key={layer.role} d={path} stroke={paint(layer.role)} stroke-width={layer.width} />
      ))}
    </g>
  );
}
