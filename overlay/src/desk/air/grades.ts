import { gradeNamed } from '../../grades.ts';
import type { Called, Cue, Grade } from '../../wire.ts';

/** The grades with their names and the part of a cue that each of them says. */
export const grades: readonly { grade: Grade; name: string; words: keyof Cue['hints'] }[] = [
  { grade: 1, name: 'Where', words: 'where' },
  { grade: 2, name: 'What', words: 'what' },
  { grade: 3, name: 'Which', words: 'which' },
  { grade: 4, name: 'Why', words: 'why' },
];

/** What the key for the next grade would put on air, in words; null where it would do nothing. */
export function nextWords(
  onAir: Cue | null,
  upcoming: Cue | null,
  called: Called | null = null,
): string | null {
  if (called) return `On air: ${calledWords(called)}`;
  if (upcoming) return `On air: ${gradeNamed(upcoming.grade)}`;
  const next = onAir && onAir.grade < 4 ? ((onAir.grade + 1) as Grade) : null;
  return next && `Next: ${gradeNamed(next)}`;
}

/** What the key back would do, in words; null where it would do nothing. */
export function backWords(onAir: Cue | null, called: Called | null = null): string | null {
  if (called) return 'Off air';
  if (!onAir) return null;
  return onAir.grade === 1 ? 'Off air' : `Back to ${gradeNamed((onAir.grade - 1) as Grade)}`;
}

export function calledWords({ cells }: Called): string {
  return cells === 1 ? 'the cell that viewers call' : `${cells} cells that viewers call`;
}
