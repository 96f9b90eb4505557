/** What is marked on the way. */
export type Mark = 'now' | 'gate' | 'featured' | 'done';

const shapes: Record<Mark, string> = {
  now: 'M3 1l8 5-8 5z',
  gate: 'M2 1h2v10H2zM8 1h2v10H8zM4 5h4v2H4z',
  done: 'M1 6l1.5-1.5L5 7l5.5-5.5L12 3 5 10z',
  featured: 'M6 0l1.8 4 4.2.4-3.2 2.8 1 4.3L6 9.2l-3.8 2.3 1-4.3L0 4.4 4.2 4z',
};

const words: Record<Mark, string> = { now: 'now', gate: 'gate', featured: 'featured', done: 'done' };

/** A triangle, a gate, a tick or a star, with the word beside it. */
export function PlanMark({ mark }: { mark: Mark }) {
  return (
    <span class={`plan-mark ${mark}`}>
      <svg viewBox="0 0 12 12" aria-hidden="true" focusable="false">
        <path d={shapes[mark]} />
      </svg>
      {words[mark]}
    </span>
  );
}
