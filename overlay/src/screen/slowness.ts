/** From one beat to the next; browsers let hidden pages run once a second. In milliseconds. */
const slow = 900;

/** So many slow beats in a row are no hiccup. */
const many = 3;

/** Notices that the browser holds this page back. */
export class Slowness {
  #before: number | null = null;
  #inARow = 0;

  /** A beat came. Whether it is one of many slow ones. */
  beat(now: number): boolean {
    const isSlow = this.#before !== null && now - this.#before >= slow;
    this.#before = now;
    this.#inARow = isSlow ? this.#inARow + 1 : 0;
    return this.#inARow >= many;
  }
}
