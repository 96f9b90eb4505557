import type { DeskModel } from '../model/model.ts';
import { cueKeyOf } from './cueKeys.ts';

/**
 * Hears the keys of the cue list and of the buttons below it. They mean something else on the rest of the desk, which does not
 * hear them.
 * @param focusText Brings the focus to where the words of a talking point are written.
 */
export function steer(event: KeyboardEvent, { cues, air }: DeskModel, focusText: () => void): void {
  const key = event.target instanceof HTMLSelectElement ? null : cueKeyOf(event);
  if (!key) return;
  event.preventDefault();
  event.stopPropagation();
  const picked = cues.picked.value;
  if (key.kind === 'step') cues.step(key.by);
  else if (picked === null) return;
  else if (key.kind === 'move') cues.move(picked, key.by);
  else if (key.kind === 'turn') void cues.turn(picked, key.stage);
  else if (key.kind === 'remove') cues.remove(picked);
  else if (key.kind === 'take') {
    if (air.mayAir.value) cues.takeOnAir(picked);
  } else {
    cues.edit(picked);
    focusText();
  }
}
