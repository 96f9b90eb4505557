import { BoardFace } from '../../board/BoardFace.tsx';
import type { Picture } from '../../wirePicture.ts';

/** What the audience sees drawn at this moment, small, on a board without digits. */
export function Mirror({ picture }: { picture: Picture | null }) {
  return (
    <div
      class="mirror"
      role="img"
      aria-label={picture ? `Drawn on air: ${picture.caption}` : 'Nothing is drawn on air'}
    >
      <BoardFace cells={[]} shapes={picture?.shapes} />
    </div>
  );
}
