import type { FoundGrid, ScreenView } from '../wireScreen.ts';

/** What came of a picture: an answer, a sentence that ends following, nothing for now, or the wish for all of it. */
export type Posted<T> =
  | { kind: 'answer'; answer: T }
  | { kind: 'refused'; sentence: string }
  | { kind: 'later' }
  | { kind: 'whole' };

/** A picture of the grid as it is sent: all of it, or what has changed since another one. */
export interface Sent {
  /** By which the page names the picture. */
  number: number;
  /** Of the grid in the picture, eight numbers. */
  corners: readonly number[];
  /** What it is a change of, and where; null for a whole picture. */
  change: { of: number; left: number; top: number } | null;
  /** A file; empty where nothing has changed. */
  file: Blob;
}

/** Sends pictures to the server on this machine, and nowhere else. */
export interface ScreenPost {
  look(page: string, sent: Sent): Promise<Posted<ScreenView>>;
  find(picture: Blob): Promise<Posted<FoundGrid>>;
}

const path = '/hubs/presenter/screen';

export class ServerPost implements ScreenPost {
  readonly #post: typeof fetch;

  constructor(post: typeof fetch = (...args) => fetch(...args)) {
    this.#post = post;
  }

  look(page: string, { number, corners, change, file }: Sent): Promise<Posted<ScreenView>> {
    const places = corners.map((corner) => corner.toFixed(2)).join(',');
    const since = change ? `&of=${change.of}&at=${change.left},${change.top}` : '';
    return this.#send(`${path}?page=${page}&picture=${number}&corners=${places}${since}`, file);
  }

  find(picture: Blob): Promise<Posted<FoundGrid>> {
    return this.#send(`${path}/grid`, picture);
  }

  async #send<T>(address: string, body: Blob): Promise<Posted<T>> {
    try {
      const response = await this.#post(address, { method: 'POST', body });
      if (response.ok) return { kind: 'answer', answer: (await response.json()) as T };
      if (response.status === 412) return { kind: 'whole' };
      if (response.status === 429 || response.status >= 500) return { kind: 'later' };
      return { kind: 'refused', sentence: (await response.text()).trim() };
    } catch {
      return { kind: 'later' };
    }
  }
}
