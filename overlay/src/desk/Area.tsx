import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface Props {
  name: string;
  class: string;
  /** Stands at the right end of the heading's line. */
  aside?: ComponentChildren;
  children: ComponentChildren;
}

/** One of the areas of the desk, with its heading. */
export function Area({ name, class: kind, aside, children }: Props) {
  const heading = useId();
  return (
    <section class={`area ${kind}`} aria-labelledby={heading}>
      <header>
        <h2 id={heading}>{name}</h2>
        {aside}
      </header>
      {children}
    </section>
  );
}
