/**
 * The key of access of this page. It comes in the link's fragment and leaves the address bar at once, since that may be on air; it
 * is kept for this tab only, so that a page can enter again after the server was restarted.
 */
export interface HeldKey {
  key: string | null;
  /** Whether the link brought it just now, so that there is no cookie for it yet. */
  isNew: boolean;
}

export function takeKey(page: Location, history: History, store: Storage | null): HeldKey {
  const slot = `companion.key.${page.pathname}`;
  const brought = new URLSearchParams(page.hash.slice(1)).get('k');
  if (!brought) return { key: store?.getItem(slot) ?? null, isNew: false };
  history.replaceState(null, '', page.pathname + page.search);
  store?.setItem(slot, brought);
  return { key: brought, isNew: true };
}

/** Storage throws where the browser was told to keep nothing; then the key lives as long as the page. */
export function tabStorage(): Storage | null {
  try {
    return window.sessionStorage;
  } catch {
    return null;
  }
}
