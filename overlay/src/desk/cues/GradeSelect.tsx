import type { Grade } from '../../wire.ts';
import { grades } from '../air/grades.ts';

interface Props {
  label: string;
  value: Grade;
  onChoose: (grade: Grade) => void;
}

/** Chooses how far a deduction is said. */
export function GradeSelect({ label, value, onChoose }: Props) {
  return (
    <label class="grade-select">
      <span class="unseen">{label}</span>
      <select value={value} onChange={(event) => onChoose(Number(event.currentTarget.value) as Grade)}>
        {grades.map(({ grade, name }) => (
          <option key={grade} value={grade}>
            {grade} {name}
          </option>
        ))}
      </select>
    </label>
  );
}
