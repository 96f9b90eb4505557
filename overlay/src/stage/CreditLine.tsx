import type { Credit } from '../wire.ts';

/** Title of the puzzle and whom it is owed to; what is unknown is left out. */
export function CreditLine({ credit: { title, setter, link } }: { credit: Credit }) {
  return (
    <header class="credit">
      {title !== '' && <h1>{title}</h1>}
      {setter !== '' && <p class="setter">set by {setter}</p>}
      {link !== '' && <p class="link">{link.replace(/^https?:\/\//, '').replace(/\/$/, '')}</p>}
    </header>
  );
}
