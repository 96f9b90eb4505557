/** Lengths of the dashes of a broken line and of the gaps between them, as they are seen. */
export interface Dashes {
  dash: number;
  gap: number;
}

/** How many dashes of about these lengths a line holds; at least one. */
export function dashCount({ dash, gap }: Dashes, length: number): number {
  return Math.max(1, Math.round(length / (dash + gap)));
}

/** Dashes and gaps stretched so that a line of some length holds a whole number of them. */
export function fitted(dashes: Dashes, length: number): Dashes {
  const scale = length / dashCount(dashes, length) / (dashes.dash + dashes.gap);
  return { dash: dashes.dash * scale, gap: dashes.gap * scale };
}

/**
 * The attributes of a stroke with square ends, which lengthen each dash by its width. The line begins in the middle of a gap, and
 * with fitted dashes it ends there as well.
 */
export function strokeDashes({ dash, gap }: Dashes, width: number) {
  return {
    'stroke-dasharray': `${dash - width} ${gap + width}`,
    'stroke-dashoffset': dash + gap / 2 - width / 2,
  };
}

/** A broken outline of a rectangle: a dash at each corner, bent round it, and whole dashes between. With square ends as above. */
export function brokenRectangle(
  x: number,
  y: number,
  wide: number,
  high: number,
  dashes: Dashes,
  width: number,
): string {
  const across = places(dashes, wide, width);
  const down = places(dashes, high, width);
  const [right, bottom] = [x + wide, y + high];
  const corners = [
    `M${x + across.half} ${y}H${x}V${y + down.half}`,
    `M${right - across.half} ${y}H${right}V${y + down.half}`,
    `M${x + across.half} ${bottom}H${x}V${bottom - down.half}`,
    `M${right - across.half} ${bottom}H${right}V${bottom - down.half}`,
  ];
  const level = across.middles.flatMap((at) =>
    [y, bottom].map((side) => `M${x + at - across.half} ${side}h${2 * across.half}`),
  );
  const upright = down.middles.flatMap((at) =>
    [x, right].map((side) => `M${side} ${y + at - down.half}v${2 * down.half}`),
  );
  return [...corners, ...level, ...upright].join('');
}

/** Middles of the dashes of one side between its corners, and half of what is drawn of a dash. */
function places(dashes: Dashes, side: number, width: number): { middles: number[]; half: number } {
  const count = dashCount(dashes, side);
  const middles = Array.from({ length: count - 1 }, (_, index) => ((index + 1) * side) / count);
  return { middles, half: (fitted(dashes, side).dash - width) / 2 };
}
