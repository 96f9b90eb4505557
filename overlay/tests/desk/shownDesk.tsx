import { act, fireEvent, render } from '@testing-library/preact';
import { DeskPage } from '../../src/desk/DeskPage.tsx';
import type { CallOut, DeskView } from '../../src/wire.ts';
import { deskView } from '../drawn.ts';
import { settle } from '../settle.ts';
import { LoneDesk } from './loneDesk.ts';

/** A desk as it is shown, with what a hand or an eye does there. */
export class ShownDesk {
  readonly desk = new LoneDesk();
  readonly page: Element = render(<DeskPage model={this.desk.model} />).container;

  get model() {
    return this.desk.model;
  }

  /** What was asked of the server. */
  get made(): string[] {
    return this.desk.made;
  }

  take(said: Partial<DeskView> = {}): void {
    act(() => this.model.takeDesk(deskView(said)));
  }

  list(callOuts: CallOut[], said: Partial<DeskView> = {}): void {
    this.take(said);
    act(() => this.model.takeCues({ sequence: 2, callOuts }));
  }

  all(selector: string): HTMLElement[] {
    return [...this.page.querySelectorAll<HTMLElement>(selector)];
  }

  at(selector: string): HTMLElement {
    const [found] = this.all(selector);
    if (!found) throw new Error(`There is no ${selector}.`);
    return found;
  }

  cellAt(name: string): HTMLElement {
    return this.at(`[aria-label^="${name},"]`);
  }

  /** @param area Where to look for it, as a selector; everywhere by default. */
  button(name: string, area = ''): HTMLButtonElement {
    const found = this.all(`${area} button`).find((each) => each.textContent?.startsWith(name));
    if (!(found instanceof HTMLButtonElement)) throw new Error(`There is no button ${name}.`);
    return found;
  }

  key(name: string, target: Element = document.body, more: Partial<KeyboardEvent> = {}): void {
    act(() => {
      fireEvent.keyDown(target, { key: name, ...more });
    });
  }

  async submit(form: string): Promise<void> {
    await act(async () => {
      fireEvent.submit(this.at(form));
      await settle();
    });
  }
}
