/** Path of a rectangle that lies inside another by a distance, all in board units. */
export function rectangle(x: number, y: number, width: number, height: number, inside = 0): string {
  const [wide, high] = [rounded(width - 2 * inside), rounded(height - 2 * inside)];
  return `M${rounded(x + inside)} ${rounded(y + inside)}h${wide}v${high}h${-wide}Z`;
}

/** Path of a lozenge round a centre. */
export function lozenge(x: number, y: number, reach: number): string {
  const r = rounded(reach);
  return `M${rounded(x)} ${rounded(y - reach)}l${r} ${r} ${-r} ${r} ${-r} ${-r}Z`;
}

export interface Point {
  x: number;
  y: number;
}

/** Path round all that is nearer than a distance to a straight line, which runs right or down. */
export function capsule(from: Point, to: Point, reach: number): string {
  const [x, y, r] = [rounded(from.x - reach), rounded(from.y - reach), rounded(reach)];
  const [wide, high] = [rounded(to.x - from.x), rounded(to.y - from.y)];
  const bend = (dx: number, dy: number) => `a${r} ${r} 0 0 1 ${dx} ${dy}`;
  return `M${rounded(x + r)} ${y}h${wide}${bend(r, r)}v${high}${bend(-r, r)}h${-wide}${bend(-r, -r)}v${-high}${bend(r, -r)}Z`;
}

/** Path of a quadratic curve. */
export function curve(from: Point, bend: Point, to: Point): string {
  return `M${from.x} ${from.y}Q${bend.x} ${bend.y} ${to.x} ${to.y}`;
}

const pieces = 16;

/** Length of a quadratic curve, by straight pieces; for dashes that is near enough. */
export function curveLength(from: Point, bend: Point, to: Point): number {
  let length = 0;
  let last = from;
  for (let piece = 1; piece <= pieces; piece++) {
    const t = piece / pieces;
    const at = (a: number, b: number, c: number) => (1 - t) ** 2 * a + 2 * t * (1 - t) * b + t ** 2 * c;
    const next = { x: at(from.x, bend.x, to.x), y: at(from.y, bend.y, to.y) };
    length += Math.hypot(next.x - last.x, next.y - last.y);
    last = next;
  }
  return length;
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
