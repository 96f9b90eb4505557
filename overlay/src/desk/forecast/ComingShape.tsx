import type { Coming } from '../../wireForecast.ts';

const near = 'M2 3l4 3.5L2 10zM7 3l4 3.5L7 10z';
const never = 'M2 6h8';

const shapes: Record<Coming, string> = {
  open: 'M6 1l5 5-5 5-5-5z',
  near,
  ahead: 'M4 3l4 3.5L4 10z',
  late: 'M1 6h1.5M5 6h1.5M9 6h1.5',
  never,
  shown: 'M2 6l3 3.5L10.5 2',
  off: never,
};

const filled: ReadonlySet<Coming> = new Set<Coming>(['open', 'near', 'ahead']);

/** A lozenge for what is open, one or two points for what is ahead, dots, a dash or a tick for the rest. The words say the same. */
export function ComingShape({ coming }: { coming: Coming }) {
  return (
    <svg
      class={filled.has(coming) ? 'coming filled' : 'coming'}
      viewBox="0 0 12 12"
      aria-hidden="true"
      focusable="false"
    >
      <path d={shapes[coming]} />
    </svg>
  );
}
