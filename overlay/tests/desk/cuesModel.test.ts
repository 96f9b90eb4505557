import { beforeEach, expect, test } from 'vitest';
import type { CallOut } from '../../src/wire.ts';
import { callOut, cuedWing, deduction, deskView } from '../drawn.ts';
import { settle } from '../settle.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;

beforeEach(() => {
  desk = new LoneDesk();
  desk.model.takeDesk(deskView());
});

const cues = () => desk.model.cues;
const list = (...callOuts: CallOut[]) => desk.model.takeCues({ sequence: 2, callOuts });
const at = (id: number): CallOut => {
  const found = cues().callOuts.value.find((each) => each.id === id);
  if (!found) throw new Error(`There is no call-out ${id}.`);
  return found;
};

test('what goes is called out before what stands by, the first of the list first', () => {
  list(
    callOut(1, { stage: 'done' }),
    callOut(2, { stage: 'standBy' }),
    callOut(3, { stage: 'go' }),
    callOut(4, { stage: 'go' }),
  );

  expect(cues().called.value?.id).toBe(3);
  expect(cues().alsoCalled.value).toBe(2);
  list(callOut(1), callOut(2, { stage: 'standBy' }));
  expect(cues().called.value?.id).toBe(2);
  expect(cues().alsoCalled.value).toBe(0);
  list(callOut(1), callOut(2, { stage: 'done' }));
  expect(cues().called.value).toBeNull();
  expect(cues().alsoCalled.value).toBe(0);
});

test('a move names the neighbour that the call-out comes behind', () => {
  list(callOut(1), callOut(2), callOut(3));
  cues().move(at(3), -1);
  cues().move(at(2), -1);
  cues().move(at(1), 1);
  cues().move(at(1), -1);
  cues().move(at(3), 1);

  expect(desk.made).toEqual(['MoveCue 3 1', 'MoveCue 2 null', 'MoveCue 1 2']);
});

test('each change names the version that was seen', () => {
  list(callOut(1, { version: 3 }), cuedWing(2, { version: 5 }));
  void cues().turn(at(1), 'go');
  cues().regrade(at(2), 4);
  cues().takeOnAir(at(2));
  cues().remove(at(1));

  expect(desk.made).toEqual(['TurnCue 1 3 "go"', 'RegradeCue 2 5 4', 'TakeCue 2 5', 'RemoveCue 1 3']);
});

test('arrows pick one after the other and stop at the ends', () => {
  list(callOut(1), callOut(2));
  const picked = [1, 1, 1, -1, -1].map((by) => {
    cues().step(by as 1 | -1);
    return cues().picked.value?.id;
  });

  expect(picked).toEqual([1, 2, 2, 1, 1]);
});

test('where the picked one is taken off the list, the one in its place is picked', () => {
  list(callOut(1), callOut(2), callOut(3));
  cues().pick(2);
  list(callOut(1), callOut(3));
  expect(cues().picked.value?.id).toBe(3);

  list(callOut(1));
  expect(cues().picked.value?.id).toBe(1);
  list();
  expect(cues().picked.value).toBeNull();
});

test('the picked one stays picked wherever it moves', () => {
  list(callOut(1), callOut(2), callOut(3));
  cues().pick(2);
  list(callOut(3), callOut(1), callOut(2));

  expect(cues().picked.value?.id).toBe(2);
});

test('a new talking point leaves its field once it was taken', async () => {
  cues().write('Thanks to the setter');
  await cues().submit();

  expect(desk.made).toEqual(['CueText "Thanks to the setter"']);
  expect(cues().draft.value.text).toBe('');
});

test('new words name the version that was seen when they were begun, and stay where they are refused', async () => {
  list(callOut(1, { version: 2, text: 'Thanks' }));
  cues().edit(at(1));
  list(callOut(1, { version: 3, text: 'Many thanks' }));
  cues().write('Thanks to the setter');
  desk.calls.refusals.set('RewordCue', 'Somebody changed this just now: look again.');
  await cues().submit();

  expect(desk.made).toEqual(['RewordCue 1 2 "Thanks to the setter"']);
  expect(cues().draft.value).toEqual({ text: 'Thanks to the setter', changes: { id: 1, version: 2 } });
  expect(desk.model.asking.said.value).toBe('Somebody changed this just now: look again.');
  cues().dropDraft();
  expect(cues().draft.value).toEqual({ text: '', changes: null });
});

test('what was written on while the first words were sent is kept', async () => {
  cues().write('Thanks');
  const sent = cues().submit();
  cues().write('Thanks and more');
  await sent;

  expect(cues().draft.value.text).toBe('Thanks and more');
});

test('the words of a deduction are not edited', () => {
  list(cuedWing(1));
  cues().edit(at(1));

  expect(cues().draft.value.changes).toBeNull();
});

test('a deduction is put on the list at the grade that is chosen', () => {
  cues().cue('wing');
  cues().chooseGrade(4);
  cues().cue('wing');

  expect(desk.made).toEqual(['CueDeduction "wing" 2', 'CueDeduction "wing" 4']);
});

test('a co-host looks at deductions without having them stand by', async () => {
  const wing = deduction('wing', { cells: [{ cell: 'r1c2', role: 'pivot' }] });
  desk.model.takeDesk(deskView({ role: 'coHost' }));
  desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [wing, deduction('other')] });
  desk.model.next.step(1);

  expect(desk.made).toEqual([]);
  expect(desk.model.next.deduction.value).toBe(wing);
  expect([...desk.model.board.pointedAt.value]).toEqual([1]);

  desk.model.board.pointAt(['r1c1']);
  expect([...desk.model.board.pointedAt.value]).toEqual([0]);
  desk.model.board.pointAt([]);
  expect([...desk.model.board.pointedAt.value]).toEqual([1]);

  await desk.model.next.standBy('wing');
  await settle();
  expect(desk.made).toEqual(['StandBy "wing"']);
});

test('a deduction that a co-host looked at and that is not open any more has no words', () => {
  desk.model.takeDesk(deskView({ role: 'coHost' }));
  desk.model.takeNext({ sequence: 1, blocked: null, goesOn: false, deductions: [deduction('wing')] });
  desk.model.next.choose('wing');
  desk.model.takeNext({ sequence: 2, blocked: null, goesOn: false, deductions: [] });

  expect(desk.model.next.deduction.value).toBeNull();
});
