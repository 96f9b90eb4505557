import { beforeEach, expect, test } from 'vitest';
import { deskView, frame } from '../drawn.ts';
import { LoneDesk } from './loneDesk.ts';

let desk: LoneDesk;

beforeEach(() => {
  desk = new LoneDesk();
  desk.model.takeDesk(deskView({ scenes: [{ name: 'main', frame }] }));
});

const scenes = () => desk.model.scenes;
const at = (left: number) => ({ ...frame, left });

test('while a board is placed its outline shows, and no longer', () => {
  scenes().place('main');
  expect(scenes().placing.value).toEqual({ scene: 'main', frame });

  scenes().finish();
  expect(desk.made).toEqual(['ShowFrame "main"', 'ShowFrame null']);
});

test('closing the dialog takes the outline off the broadcast', () => {
  desk.model.open('scenes');
  scenes().place('main');
  desk.model.close();

  expect(desk.made.at(-1)).toBe('ShowFrame null');
  expect(scenes().placing.value).toBeNull();
});

test('a drag is sent once for each picture of the screen, the newest place winning', () => {
  scenes().place('main');
  for (const left of [0.1, 0.11, 0.12]) scenes().change(at(left));
  expect(desk.made.length).toBe(1);

  desk.drawPicture();
  expect(desk.made.slice(1)).toEqual([`PlaceFrame "main" ${JSON.stringify(at(0.12))}`]);

  scenes().change(at(0.13));
  desk.drawPicture();
  expect(desk.made.length).toBe(3);
});

test('the last place is sent even if the dialog is closed at once', () => {
  scenes().place('main');
  scenes().change(at(0.2));
  scenes().finish();
  desk.drawPicture();

  expect(desk.made.slice(1)).toEqual([`PlaceFrame "main" ${JSON.stringify(at(0.2))}`, 'ShowFrame null']);
});

test('a scene that is forgotten while it is placed is finished first', () => {
  scenes().place('main');
  scenes().forget('main');

  expect(desk.made).toEqual(['ShowFrame "main"', 'ShowFrame null', 'ForgetScene "main"']);
});

test('a name that is refused is said to who asked for it', async () => {
  desk.calls.refusals.set('PlaceFrame', 'Choose another name.');

  expect(await scenes().add('?')).toBe('Choose another name.');
  expect(desk.model.asking.said.value).toBe('');
});
