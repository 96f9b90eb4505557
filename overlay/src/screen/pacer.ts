import { differs } from './fingerprint.ts';

/** The least time from one picture sent to the next that has changed, in milliseconds. */
export const pace = 100;

/** How long to wait after the server could not be reached or was busy, in milliseconds. */
export const pause = 500;

/**
 * Says when to send the grid: when it has changed or the server wants to see it again, one at a time, the newest winning. Times are in
 * milliseconds of one clock.
 */
export class Pacer {
  #sent: Uint8Array | null = null;
  #isOnTheWay = false;
  #takenAt = 0;
  #notBefore = 0;
  #again: number | null = null;

  /** Whether to send now; if so, the picture counts as sent and on its way. */
  take(now: number, fingerprint: Uint8Array): boolean {
    if (this.#isOnTheWay) return false;
    const isWanted = this.#again !== null && now >= this.#again;
    const hasChanged = this.#sent === null || differs(this.#sent, fingerprint);
    if (!isWanted && !(hasChanged && now >= this.#notBefore)) return false;
    this.#sent = fingerprint;
    this.#isOnTheWay = true;
    this.#takenAt = now;
    this.#notBefore = now + pace;
    this.#again = null;
    return true;
  }

  /** The server has answered.
   * @param again How many milliseconds after this picture it wants to see the grid again; null for not before it changes.
   */
  answered(now: number, again: number | null): void {
    this.#isOnTheWay = false;
    if (again !== null) this.#wish(Math.max(now, this.#takenAt + again));
  }

  /** Nothing came of the picture that was sent.
   * @param rest How long to wait before the next one.
   */
  failed(now: number, rest = pause): void {
    this.#isOnTheWay = false;
    this.#sent = null;
    this.#notBefore = now + rest;
  }

  /** The grid is to be seen at this time, changed or not. */
  hurry(at: number): void {
    this.#wish(at);
  }

  #wish(at: number): void {
    this.#again = this.#again === null ? at : Math.min(this.#again, at);
  }
}
