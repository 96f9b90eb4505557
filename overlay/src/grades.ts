import type { Grade } from './wire.ts';

/** The grades with their names. */
export const gradeNames: readonly { grade: Grade; name: string }[] = [
  { grade: 1, name: 'where' },
  { grade: 2, name: 'what' },
  { grade: 3, name: 'which' },
  { grade: 4, name: 'why' },
];

/** As in `2 what`. */
export function gradeNamed(grade: Grade): string {
  return `${grade} ${gradeNames[grade - 1]?.name}`;
}
