import type { ComponentChildren } from 'preact';

/** How something at the foot of the desk is doing: a tick or a cross, and the words. */
export function Sign({ name, isUp, children }: { name: string; isUp: boolean; children: ComponentChildren }) {
  return (
    <p class={`sign ${name}`} role="status">
      <svg viewBox="0 0 12 12" aria-hidden="true" focusable="false">
        <path d={isUp ? 'M2 6.5l3 3 5-7' : 'M2.5 2.5l7 7M9.5 2.5l-7 7'} />
      </svg>
      {children}
    </p>
  );
}
