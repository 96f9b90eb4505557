/** Pictures as they cross the wire. */

/** In board units: the board is 9 by 9 and a cell 1 by 1. Drawn in order, the lowest first. */
export type Shape =
  | { kind: 'house'; x: number; y: number; width: number; height: number }
  | { kind: 'cell'; x: number; y: number; isSecond: boolean; tab: string }
  | { kind: 'group'; x1: number; y1: number; x2: number; y2: number }
  | {
      kind: 'link';
      x1: number;
      y1: number;
      x2: number;
      y2: number;
      bendX: number;
      bendY: number;
      isStrong: boolean;
    }
  | { kind: 'mark'; x: number; y: number; digit: number }
  | { kind: 'slash'; x: number; y: number; digit: number }
  | { kind: 'lozenge'; x: number; y: number; digit: number }
  | { kind: 'called'; x: number; y: number; count: string };

export interface Picture {
  shapes: Shape[];
  caption: string;
}
