import type { FoundGrid, ScreenView } from '../wireScreen.ts';

/** What came of a picture: an answer, a sentence that ends following, or nothing for now. */
export type Posted<T> =
  | { kind: 'answer'; answer: T }
  | { kind: 'refused'; sentence: string }
  | { kind: 'later' };

/** Sends pictures to the server on this machine, and nowhere else. */
export interface ScreenPost {
  /** @param corners Of the grid in the picture, eight numbers. */
  look(page: string, corners: readonly number[], picture: Blob): Promise<Posted<ScreenView>>;
  find(picture: Blob): Promise<Posted<FoundGrid>>;
}

const path = '/hubs/presenter/screen';

export class ServerPost implements ScreenPost {
  readonly #post: typeof fetch;

  constructor(post: typeof fetch = (...args) => fetch(...args)) {
    this.#post = post;
  }

  look(page: string, corners: readonly number[], picture: Blob): Promise<Posted<ScreenView>> {
    const places = corners.map((number) => number.toFixed(2)).join(',');
    return this.#send(`${path}?page=${page}&corners=${places}`, picture);
  }

  find(picture: Blob): Promise<Posted<FoundGrid>> {
    return this.#send(`${path}/grid`, picture);
  }

  async #send<T>(address: string, body: Blob): Promise<Posted<T>> {
    try {
      const response = await this.#post(address, { method: 'POST', body });
      if (response.ok) return { kind: 'answer', answer: (await response.json()) as T };
      if (response.status === 429 || response.status >= 500) return { kind: 'later' };
      return { kind: 'refused', sentence: (await response.text()).trim() };
    } catch {
      return { kind: 'later' };
    }
  }
}
