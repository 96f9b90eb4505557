import { paint } from '../palette/variable.ts';
import type { Shape } from '../wirePicture.ts';
import { Edged } from './Edged.tsx';
import { widthWithEdges } from './edges.ts';
import { rectangle } from './paths.ts';
import { Tab } from './Tab.tsx';

/** First role: one thick frame. In board units. */
const thick = 0.08;
/** Second role: a frame parted by a dark line in the middle, which makes it a double one. */
const double = 0.1;
const parting = 0.036;
/** The frame begins a little outside the cell, so that its inner edge keeps clear of the candidates. */
const outside = 0.04;

/** A cell of the pattern, framed by its role, with the role's letter on a tab in the corner. */
export function PatternCell({ shape }: { shape: Extract<Shape, { kind: 'cell' }> }) {
  const { x, y, isSecond, tab } = shape;
  const colour = isSecond ? 'secondRole' : 'firstRole';
  const width = isSecond ? double : thick;
  const frame = rectangle(x, y, 1, 1, widthWithEdges(width) / 2 - outside);
  return (
    <g class={isSecond ? 'cell second' : 'cell first'}>
      <Edged path={frame} colour={colour} width={width} />
      {isSecond && <path d={frame} fill="none" stroke={paint('darkEdge')} stroke-width={parting} />}
      {tab !== '' && <Tab x={x} y={y} colour={colour} isRound={isSecond} letter={tab} />}
    </g>
  );
}
