import { act, fireEvent, render } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { ReplayModel, wantedOf } from '../../src/replay/model.ts';
import { ReplayPage } from '../../src/replay/ReplayPage.tsx';
import { cellsOf, sketch } from '../drawn.ts';
import { settle } from '../settle.ts';

/** Holds answers back until the test lets them go. */
class SlowHub {
  readonly asked: string[] = [];
  #waiting: (() => void)[] = [];
  refusal: string | null = null;

  invoke<T>(method: string, ...args: unknown[]): Promise<T> {
    this.asked.push([method, ...args].join(' '));
    const moments = [1, 2, 3, 4].map((number) => ({ number, at: number, recorded: null }));
    const timeline = this.refusal === null ? { title: 'Lanterns', events: 4, moments } : null;
    const answer =
      method === 'OpenShow'
        ? { refusal: this.refusal, timeline }
        : {
            sequence: Number(args[0]),
            credit: { title: `Moment ${args[0]}`, setter: '', link: '' },
            cells: cellsOf(sketch),
            grade: null,
            picture: null,
            code: null,
          };
    if (method === 'OpenShow') return Promise.resolve(answer as T);
    return new Promise((resolve) => this.#waiting.push(() => resolve(answer as T)));
  }

  async answer(): Promise<void> {
    await act(async () => {
      for (const go of this.#waiting.splice(0)) go();
      await settle();
    });
  }
}

const shown = async (hub: SlowHub, speed: number | null = null) => {
  const model = new ReplayModel(hub, { show: '3', speed, controls: true });
  const page = render(<ReplayPage model={model} refusal="" />).container;
  await act(() => model.open());
  return { model, page };
};

test('a replay shows one moment after the other by its keys', async () => {
  const hub = new SlowHub();
  const { page } = await shown(hub);
  await hub.answer();
  expect(page.querySelector('h1')?.textContent).toBe('Moment 1');

  act(() => void fireEvent.keyDown(document, { key: 'ArrowRight' }));
  await hub.answer();

  expect(page.querySelector('h1')?.textContent).toBe('Moment 2');
  expect(page.querySelector('.place')?.textContent).toContain('2 of 4');
});

test('a fast replay asks for one moment at a time, and for the newest next', async () => {
  const hub = new SlowHub();
  const { model } = await shown(hub, 2);
  expect(model.position.value?.isPlaying).toBe(true);

  act(() => model.tick(0.6));
  act(() => model.tick(0.6));
  expect(hub.asked).toEqual(['OpenShow 3', 'StageAfter 1']);
  await hub.answer();

  expect(hub.asked.slice(2)).toEqual(['StageAfter 3']);
});

test('the line of controls is hidden by H, and asked away by the address', async () => {
  const { page } = await shown(new SlowHub());
  expect(page.querySelector('nav')).not.toBeNull();

  act(() => void fireEvent.keyDown(document, { key: 'h' }));

  expect(page.querySelector('nav')).toBeNull();
  expect(wantedOf('?show=3&speed=4&controls=no')).toEqual({ show: '3', speed: 4, controls: false });
  expect(wantedOf('?show=latest&speed=x')).toEqual({ show: 'latest', speed: null, controls: true });
  expect(wantedOf('')).toBeNull();
});

test('a show that is not there is refused plainly', async () => {
  const hub = new SlowHub();
  hub.refusal = 'There is no show 3.';
  const { page } = await shown(hub);

  expect(page.textContent).toBe('There is no show 3.');
});
