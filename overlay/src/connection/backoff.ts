/** No wait is longer, however long the server is away, unless a page says otherwise. In milliseconds. */
export const longestWait = 5000;

const firstCeiling = 250;

/**
 * How long to wait before a try, in milliseconds: none before the first, then full jitter under a doubling ceiling. It never says
 * "give up": a page in the broadcast software has nobody to reload it.
 * @param attempt 0 for the first try.
 * @param random From 0 up to but without 1.
 * @param longest The highest ceiling.
 */
export function waitBefore(attempt: number, random: number, longest = longestWait): number {
  if (attempt === 0) return 0;
  return random * Math.min(longest, firstCeiling * 2 ** Math.min(attempt, 16));
}
