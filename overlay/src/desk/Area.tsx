import type { ComponentChildren, Ref } from 'preact';
import { useId } from 'preact/hooks';

interface Props {
  name: string;
  class: string;
  /** Stands at the right end of the heading's line. */
  aside?: ComponentChildren;
  /** Where it is to take the focus as a whole. */
  focusable?: Ref<HTMLElement>;
  children: ComponentChildren;
}

/** One of the areas of the desk, with its heading. */
export function Area({ name, class: kind, aside, focusable, children }: Props) {
  const heading = useId();
  return (
    <section
      class={`area ${kind}`}
      aria-labelledby={heading}
      ref={focusable ?? null}
      tabIndex={focusable ? -1 : undefined}
    >
      <header>
        <h2 id={heading}>{name}</h2>
        {aside}
      </header>
      {children}
    </section>
  );
}
