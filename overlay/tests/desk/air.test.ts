import { expect, test } from 'vitest';
import { backWords, nextWords } from '../../src/desk/air/grades.ts';
import type { Cue, Grade } from '../../src/wire.ts';
import { deduction, deskView, picture } from '../drawn.ts';
import { LoneDesk } from './loneDesk.ts';

const cue = (id: string, grade: Grade): Cue => ({
  deduction: deduction(id),
  grade,
  hints: { where: '', what: '', which: '', why: '' },
  picture: picture(''),
});

test.each([
  ['nothing at all', null, null, null],
  ['something stands by', null, cue('b', 1), 'On air: 1 where'],
  ['something is on air', cue('a', 2), null, 'Next: 3 which'],
  ['another one stands by', cue('a', 2), cue('b', 1), 'On air: 1 where'],
  ['all of it is on air', cue('a', 4), null, null],
] as const)('the next key: %s', (_, onAir, upcoming, words) => {
  expect(nextWords(onAir, upcoming)).toBe(words);
});

test('the key back goes a grade back and from the first off air', () => {
  expect(backWords(null)).toBeNull();
  expect(backWords(cue('a', 1))).toBe('Off air');
  expect(backWords(cue('a', 3))).toBe('Back to 2 what');
});

test('what stands by and is on air already does not come next', () => {
  const { model } = new LoneDesk();
  model.takeDesk(deskView({ onAir: cue('a', 2), standby: cue('a', 3) }));
  expect(model.air.upcoming.value).toBeNull();

  model.takeDesk(deskView({ onAir: cue('a', 2), standby: cue('b', 1) }));
  expect(model.air.upcoming.value?.deduction.id).toBe('b');
});

test('a co-host puts things on air only where that is allowed', () => {
  const { model } = new LoneDesk();
  model.takeDesk(deskView({ role: 'coHost' }));
  expect(model.air.mayAir.value).toBe(false);

  model.takeDesk(deskView({ role: 'coHost', coHostMayAir: true }));
  expect(model.air.mayAir.value).toBe(true);
});
