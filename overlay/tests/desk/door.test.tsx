import { act, cleanup, fireEvent } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Asking } from '../../src/desk/model/asking.ts';
import { ViewersModel } from '../../src/desk/model/viewers.ts';
import type { DoorView } from '../../src/wire.ts';
import { settle } from '../settle.ts';
import { RecordingCalls } from './loneDesk.ts';
import { ShownDesk } from './shownDesk.tsx';

let shown: ShownDesk;

const door = (said: Partial<DoorView> = {}): DoorView => ({
  sequence: 1,
  door: 'byLink',
  present: 3,
  most: 1000,
  address: 'https://studio.example/audience',
  isForOthers: true,
  ...said,
});

beforeEach(() => {
  shown = new ShownDesk();
  shown.take();
  act(() => {
    shown.model.takeViewers({
      sequence: 1,
      limits: { open: true, highest: 4, quietOnAir: false },
      delay: { seconds: 15, least: 2, most: 15 },
      code: null,
      measured: null,
      measuredViewers: 0,
      answers: 0,
      calls: [],
    });
    shown.model.viewers.takeDoor(door());
  });
  shown.key('v');
});

afterEach(cleanup);

test('the door is set, and how many are there is said', async () => {
  expect(shown.at('.door').textContent).toContain('3 viewers are there');
  expect(shown.at('.door').textContent).toContain('https://studio.example/audience');
  await act(async () => {
    fireEvent.click(shown.all('.door input')[2] as HTMLElement);
    await settle();
  });

  expect(shown.made).toEqual(['SetAudienceDoor "open"']);
});

test('an address that only this machine reaches is said to be one, and a full page to be full', () => {
  act(() => shown.model.viewers.takeDoor(door({ isForOthers: false, present: 1, most: 1 })));

  expect(shown.at('.door').textContent).toContain('1 viewer is there: as many as may be');
  expect(shown.at('.door').textContent).toContain('Only this machine is reached there');
});

test('a co-host reads it and changes nothing', () => {
  shown.take({ role: 'coHost' });

  expect((shown.at('.door') as HTMLFieldSetElement).disabled).toBe(true);
  expect(shown.button('Copy audience link').disabled).toBe(true);
});

test('the link is asked for by a button, copied when it comes, and stands nowhere on the page', async () => {
  shown.button('Copy audience link').click();
  expect(shown.made).toEqual(['AudienceLink']);
  const copied: string[] = [];
  const model = new ViewersModel(new Asking(new RecordingCalls()), async (text) => {
    copied.push(text);
  });

  await model.takeLink('https://studio.example/audience#k=secret');

  expect(copied).toEqual(['https://studio.example/audience#k=secret']);
  expect(model.copied.value).toBe('Copied: paste it where your viewers read it.');
  expect(JSON.stringify(model.door.value)).not.toContain('secret');
});

test('where the browser lets nothing be copied the way out is said', async () => {
  const model = new ViewersModel(new Asking(new RecordingCalls()), () => Promise.reject(new Error('denied')));

  await model.takeLink('https://studio.example/audience#k=secret');

  expect(model.copied.value).toBe('This browser let nothing be copied: the link stands in the terminal.');
});
