/** The part of a keyboard event that counts. */
export type AnswerPress = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'repeat'>;

/**
 * What one key says of the cell that is asked about: its digit, 0 for nothing, null for as it was read; undefined where the key says
 * nothing of it.
 */
export function answerOf({ key, ctrlKey, metaKey, altKey, repeat }: AnswerPress): number | null | undefined {
  if (ctrlKey || metaKey || altKey || repeat) return undefined;
  if (/^[1-9]$/.test(key)) return Number(key);
  if (key === 'Backspace' || key === 'Delete' || key === '0') return 0;
  return key === 'Enter' ? null : undefined;
}
