import { gradeNamed } from '../../grades.ts';
import type { CallOut } from '../../wire.ts';

/** What a cue is about, in a few words: the rule and the grade, or that it is a talking point. */
export function aboutWords({ deduction }: CallOut): string {
  return deduction ? `${deduction.name}, grade ${gradeNamed(deduction.grade)}` : 'Talking point';
}
