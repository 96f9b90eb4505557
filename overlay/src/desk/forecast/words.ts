import type { ForecastLine } from '../../wireForecast.ts';

/** When a rule comes, in a few words: of the ways on only one was tried, so that no more is said than was found. */
export function comingWords({ coming, isPassed, steps }: ForecastLine): string {
  switch (coming) {
    case 'open':
      return 'open now';
    case 'near':
    case 'ahead':
      return steps === 1 ? '1 easier step away' : `at most ${steps} easier steps away`;
    case 'late':
      return 'later, behind harder steps';
    case 'never':
      return isPassed ? 'passed: not found ahead' : 'not found ahead';
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
