import type { Beat } from './beat.ts';
import type { Capture } from './capture.ts';
import { type Corners, foundCorners, sentSize } from './corners.ts';
import { allOf } from './crop.ts';
import type { ScreenPost } from './post.ts';

/** Whole pictures are sent no larger than this: a grid that fills a good part of one can be found in it. */
const longestWhole = 1920;

/** Has the grid looked for in the whole picture; null where none was found, or nobody could look. */
export async function searchGrid(capture: Capture, post: ScreenPost): Promise<Corners | null> {
  const whole = allOf(capture.size);
  const size = sentSize(whole, longestWhole);
  const picture = await capture.take(whole, size).file('image/jpeg', allOf(size));
  const posted = picture ? await post.find(picture) : null;
  if (posted?.kind !== 'answer' || posted.answer.corners === null) return null;
  return foundCorners(posted.answer.corners, size.width / whole.width);
}

/**
 * Waits for the first picture; answers whether it came.
 * @param isWanted Whether it is still waited for.
 */
export function firstPicture(capture: Capture, beat: Beat, isWanted: () => boolean): Promise<boolean> {
  if (capture.isReady) return Promise.resolve(true);
  return new Promise((resolve) => {
    const end = beat(() => {
      if (!capture.isReady && isWanted()) return;
      end();
      resolve(isWanted());
    });
  });
}
