import type { Credit } from '../wire.ts';

/** Which puzzle is on the board and whom it is owed to. */
export function CreditBar({ credit: { title, setter, link } }: { credit: Credit }) {
  return (
    <p class="credit-bar">
      <b>{title === '' ? 'Untitled puzzle' : title}</b>
      {setter !== '' && <> set by {setter}</>}
      {/^https?:/.test(link) && (
        <>
          {' '}
          <a href={link} target="_blank" rel="noreferrer">
            source
          </a>
        </>
      )}
    </p>
  );
}
