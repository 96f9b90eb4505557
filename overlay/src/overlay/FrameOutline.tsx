import { Edged } from '../picture/Edged.tsx';
import { rectangle } from '../picture/paths.ts';

const grip = 0.3;

/** The board's place, drawn while the presenter puts it where the board is: outline, blocks and the four corners. */
export function FrameOutline() {
  const corners = [
    [0, 0],
    [9 - grip, 0],
    [0, 9 - grip],
    [9 - grip, 9 - grip],
  ] as const;
  return (
    <g class="frame-outline">
      <Edged path="M3 0V9M6 0V9M0 3H9M0 6H9" colour="lookAt" width={0.02} />
      <Edged path={rectangle(0, 0, 9, 9)} colour="lookAt" width={0.05} />
      {corners.map(([x, y]) => (
        <Edged key={`${x} ${y}`} path={rectangle(x, y, grip, grip)} colour="lookAt" width={0.05} />
      ))}
    </g>
  );
}
