import type { WatchKind } from '../../wire.ts';

/** Told apart by shape: something is wrong, something has changed, something may have been overlooked. */
export type Sign = 'wrong' | 'changed' | 'overlooked';

export const kinds: Record<WatchKind, { name: string; sign: Sign }> = {
  houseBroken: { name: 'House broken', sign: 'wrong' },
  wrongDigit: { name: 'Wrong digit', sign: 'wrong' },
  wrongStrike: { name: 'Wrong strike', sign: 'wrong' },
  staleMark: { name: 'Stale mark', sign: 'changed' },
  featuredOpen: { name: 'Featured open', sign: 'overlooked' },
  airOutdated: { name: 'Air outdated', sign: 'changed' },
  freeDigit: { name: 'Free digit', sign: 'overlooked' },
  easierOpen: { name: 'Easier open', sign: 'overlooked' },
  featuredNear: { name: 'Featured near', sign: 'overlooked' },
  featuredPassed: { name: 'Featured passed', sign: 'changed' },
};

/** When a note began, counted in entries. */
export function began(entries: number): string {
  if (entries === 0) return 'since the last entry';
  return entries === 1 ? '1 entry ago' : `${entries} entries ago`;
}
