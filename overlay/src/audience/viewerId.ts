const slot = 'companion.viewer';

type Bytes = Uint8Array<ArrayBuffer>;

/**
 * By what the companion knows this tab again, so that hints go on where they were after a reload: 16 bytes of chance as base64url.
 * It says nothing of who looks on, and goes with the tab.
 */
export function viewerId(store: Storage | null, chance: (bytes: Bytes) => Bytes = fill): string {
  const kept = store?.getItem(slot);
  if (kept) return kept;
  const made = base64Url(chance(new Uint8Array(16)));
  store?.setItem(slot, made);
  return made;
}

function fill(bytes: Bytes): Bytes {
  return crypto.getRandomValues(bytes);
}

function base64Url(bytes: Bytes): string {
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');
}
