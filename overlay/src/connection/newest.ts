/**
 * Lets through only views that are not older than the last one. It holds within one connection: a restarted server may count anew.
 */
export class Newest {
  #last = Number.NEGATIVE_INFINITY;

  admits(view: { sequence: number }): boolean {
    if (view.sequence < this.#last) return false;
    this.#last = view.sequence;
    return true;
  }

  startAnew(): void {
    this.#last = Number.NEGATIVE_INFINITY;
  }
}
