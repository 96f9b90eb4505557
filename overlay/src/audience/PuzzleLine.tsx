import type { Credit } from '../wire.ts';

/** Which puzzle it is and whom it is owed to, with the way to it. */
export function PuzzleLine({ credit: { title, setter, link } }: { credit: Credit }) {
  return (
    <header class="puzzle">
      <h1>{title === '' ? 'The puzzle on air' : title}</h1>
      {setter !== '' && <p>set by {setter}</p>}
      {/^https?:\/\//.test(link) && (
        <p>
          <a href={link} rel="noopener noreferrer" target="_blank">
            Where it is published
          </a>
        </p>
      )}
    </header>
  );
}
