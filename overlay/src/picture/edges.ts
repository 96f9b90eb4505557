import type { Role } from '../palette/palette.ts';

/** How far each edge shows beside a line, in board units. */
export const edge = 0.018;

/** One stroke of a line that has a dark and a light edge. */
export interface Layer {
  role: Role;
  width: number;
}

/**
 * The strokes that make a coloured line of a width, the lowest first: dark, light, colour. Seen over any picture. Their square ends
 * reach half a width further, so that the edges show at the ends too.
 */
export function layersOf(role: Role, width: number): Layer[] {
  return [
    { role: 'darkEdge', width: widthWithEdges(width) },
    { role: 'lightEdge', width: width + 2 * edge },
    { role, width },
  ];
}

/** The whole width of such a line. */
export const widthWithEdges = (width: number) => width + 4 * edge;
