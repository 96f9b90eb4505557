/**
 * From a cell's middle to the outer columns and rows of its candidates, in board units: three rows of three in the digits' order,
 * drawn together a little, so that plates keep clear of the frame of the cell. The pictures of the server stand at the same places.
 */
export const step = 0.285;

/** Where a digit stands small in the cell with this top left corner. */
export function candidatePlace(x: number, y: number, digit: number): { x: number; y: number } {
  const index = digit - 1;
  return { x: x + 0.5 + ((index % 3) - 1) * step, y: y + 0.5 + (Math.floor(index / 3) - 1) * step };
}
