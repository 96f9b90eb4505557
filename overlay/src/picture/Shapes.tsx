import type { Shape } from '../wirePicture.ts';
import { Called } from './Called.tsx';
import { Group } from './Group.tsx';
import { House } from './House.tsx';
import { Link } from './Link.tsx';
import { Lozenge } from './Lozenge.tsx';
import { Mark } from './Mark.tsx';
import { PatternCell } from './PatternCell.tsx';
import { Slash } from './Slash.tsx';
import 'virtual:palette/roles.css';
import './picture.css';

/** Draws the shapes of a picture, the lowest first, in board units. The same on air, on the stage and in the panel. */
export function Shapes({ shapes }: { shapes: readonly Shape[] }) {
  return <g class="shapes">{shapes.map((shape, index) => draw(shape, index))}</g>;
}

function draw(shape: Shape, key: number) {
  switch (shape.kind) {
    case 'house':
      return <House key={key} shape={shape} />;
    case 'cell':
      return <PatternCell key={key} shape={shape} />;
    case 'group':
      return <Group key={key} shape={shape} />;
    case 'link':
      return <Link key={key} shape={shape} />;
    case 'mark':
      return <Mark key={key} shape={shape} />;
    case 'slash':
      return <Slash key={key} shape={shape} />;
    case 'lozenge':
      return <Lozenge key={key} shape={shape} />;
    case 'called':
      return <Called key={key} shape={shape} />;
  }
}
