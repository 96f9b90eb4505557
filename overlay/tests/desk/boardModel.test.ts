import { beforeEach, expect, test } from 'vitest';
import { only, withCell } from '../../src/desk/model/selection.ts';
import { cellNamed } from '../../src/grid/cells.ts';
import { deskView } from '../drawn.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;

beforeEach(() => {
  desk = new LoneDesk();
  desk.model.takeDesk(deskView());
});

const cell = (name: string) => cellNamed(name) ?? -1;
const board = () => desk.model.board;

function choose(first: string, ...others: string[]): void {
  board().select(others.reduce((selection, name) => withCell(selection, cell(name)), only(cell(first))));
}

test('a digit goes into the cell of the cursor alone', () => {
  choose('r3c3', 'r3c4');
  board().enter(7);

  expect(desk.made).toEqual(['PlaceDigit "r3c4" 7']);
});

test.each([
  ['blockMark', 'ToggleBlockMark ["r3c3","r3c4"] 7'],
  ['cellMark', 'ToggleCellMark ["r3c3","r3c4"] 7'],
  ['strike', 'ToggleStrike ["r3c3","r3c4"] 7'],
] as const)('as %s it goes into all chosen cells', (way, call) => {
  choose('r3c4', 'r3c3');
  board().choose(way);
  board().enter(7);

  expect(desk.made).toEqual([call]);
});

test('marks go into the open ones of the chosen cells', () => {
  choose('r1c1', 'r1c2');
  board().choose('cellMark');
  board().enter(4);

  expect(desk.made).toEqual(['ToggleCellMark ["r1c2"] 4']);
});

test('where no chosen cell is open the server is left to say so', () => {
  desk.calls.refusals.set('ToggleStrike', 'There is a digit in r1c1.');
  choose('r1c1');
  board().choose('strike');
  board().enter(4);

  expect(desk.made).toEqual(['ToggleStrike ["r1c1"] 4']);
});

test('leaving a cell whose list is being written finishes the list', () => {
  desk.model.takeDesk(deskView({ writing: ['r3c3'] }));
  choose('r3c3');
  expect(desk.made).toEqual([]);

  board().move(0, 1, false);
  expect(desk.made).toEqual(['SettleMarks']);
});

test('a list is finished even if the cell is left before the view knows of it', () => {
  choose('r3c3');
  board().choose('cellMark');
  board().enter(4);
  board().enter(6);
  board().move(1, 0, false);
  board().move(1, 0, false);

  expect(desk.made).toEqual(['ToggleCellMark ["r3c3"] 4', 'ToggleCellMark ["r3c3"] 6', 'SettleMarks']);
});

test('choosing more cells does not leave the list', () => {
  desk.model.takeDesk(deskView({ writing: ['r3c3'] }));
  choose('r3c3');
  board().move(0, 1, true);

  expect(desk.made).toEqual([]);
});

test('a refusal is said, and goes with the next thing that is done', async () => {
  desk.calls.refusals.set('PlaceDigit', 'A given is never overwritten.');
  board().enter(5);
  await Promise.resolve();
  expect(desk.model.asking.said.value).toBe('A given is never overwritten.');

  board().undo();
  await Promise.resolve();
  expect(desk.model.asking.said.value).toBe('');
});

test('a co-host enters nothing', () => {
  desk.model.takeDesk(deskView({ role: 'coHost', writing: ['r1c1'] }));
  board().enter(5);
  board().erase();
  board().undo();
  board().redo();
  board().clear();
  board().settle();
  choose('r5c5');

  expect(desk.made).toEqual([]);
});
