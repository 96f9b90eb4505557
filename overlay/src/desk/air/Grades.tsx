import { useEffect, useRef } from 'preact/hooks';
import type { Cue } from '../../wire.ts';
import { grades } from './grades.ts';

interface Props {
  cue: Cue;
  /** Whether the cue is on air; else it stands by and its grade is the one that comes next. */
  isOnAir: boolean;
}

/** The four grades with their words, to be read before they go on air. */
export function Grades({ cue, isOnAir }: Props) {
  const list = useRef<HTMLOListElement>(null);

  useEffect(() => {
    list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
  }, [cue.deduction.id, cue.grade]);

  return (
    <div class="grades">
      <h3>
        <small>{isOnAir ? 'On air:' : 'Stands by:'}</small> {cue.deduction.name}
      </h3>
      <ol ref={list}>
        {grades.map(({ grade, name, words }) => {
          const isCurrent = grade === cue.grade;
          return (
            <li key={grade} class={isCurrent ? 'current' : ''} aria-current={isCurrent ? 'step' : undefined}>
              <b>
                {grade} {name}
              </b>
              <span>
                {isCurrent && <em>{isOnAir ? 'on air' : 'next'}</em>} {cue.hints[words]}
              </span>
            </li>
          );
        })}
      </ol>
    </div>
  );
}
