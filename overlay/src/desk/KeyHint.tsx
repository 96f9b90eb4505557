/** The key that does what a button does. Read aloud through `aria-keyshortcuts` of the button instead. */
export function KeyHint({ keys }: { keys: string }) {
  return (
    <span class="key" aria-hidden="true">
      {keys}
    </span>
  );
}
