import type { ForecastLine } from '../../wireForecast.ts';

/** When a rule comes, in a few words. */
export function comingWords({ coming, isPassed, steps }: ForecastLine): string {
  switch (coming) {
    case 'open':
      return 'open now';
    case 'near':
    case 'ahead':
      return steps === 1 ? '1 easier step away' : `${steps} easier steps away`;
    case 'late':
      return 'later, behind harder steps';
    case 'never':
      return isPassed ? 'passed, not on the way' : 'not on the way';
    case 'shown':
      return 'shown';
    case 'off':
      return 'cut from the ladder';
  }
}

/** What one candidate is in the way of. */
export function missWords({ nearMisses }: ForecastLine): string {
  return nearMisses.map(({ cell, digit }) => `${cell} could lose ${digit}`).join(', ');
}
