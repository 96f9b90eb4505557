import type { CellCalls, Delay, DoorView } from '../../wire.ts';

/** What was measured, in one sentence. */
export function measuredWords(measured: Delay | null, viewers: number): string {
  if (!measured) return 'Not measured: show a code, and have viewers write it in the chat.';
  const { seconds, least, most } = measured;
  if (viewers === 1) return `Measured with one viewer: ${seconds} s.`;
  return `Measured with ${viewers} viewers: ${seconds} s, from ${Math.floor(least)} to ${Math.ceil(most)} s.`;
}

/** What was called of a cell, and who was first once that is known. */
export function callWords({ viewers, named, right, standing, earlier }: CellCalls): string {
  const who = viewers === 1 ? '1 viewer' : `${viewers} viewers`;
  const count = named === 0 ? `${who}, no digit named` : `${who}, ${right} right`;
  switch (standing) {
    case 'first':
      return `${count}; the chat found it ${leadWords(earlier ?? 0)}`;
    case 'close':
      return `${count}; too close to tell who was first`;
    case 'after':
      return `${count}; after the entry`;
    case null:
      return count;
  }
}

/** A call that came just after the entry was still made before anybody can have seen it. */
function leadWords(earlier: number): string {
  return earlier < 1 ? 'first' : `${Math.floor(earlier)} s earlier`;
}

/** How many are on the audience's page. */
export function presentWords({ present, most }: DoorView): string {
  const there = present === 1 ? '1 viewer is there' : `${present} viewers are there`;
  return present >= most ? `${there}: as many as may be` : there;
}
