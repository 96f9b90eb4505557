import { BoardFace } from '../../board/BoardFace.tsx';
import type { Cue } from '../../wire.ts';

/** What the audience sees drawn at this moment, small, on a board without digits. */
export function Mirror({ onAir }: { onAir: Cue | null }) {
  return (
    <div
      class="mirror"
      role="img"
      aria-label={onAir ? `Drawn on air: ${onAir.picture.caption}` : 'Nothing is drawn on air'}
    >
      <BoardFace cells={[]} shapes={onAir?.picture.shapes} />
    </div>
  );
}
