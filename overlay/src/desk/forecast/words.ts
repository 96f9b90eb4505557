import type { ForecastLine } from '../../wireForecast.ts';

/** When a rule comes, in a few words, which say no more than was found. */
export function comingWords({ coming, isPassed, steps, atLeast }: ForecastLine): string {
  switch (coming) {
    case 'open':
      return 'open now';
    case 'near':
    case 'ahead':
      return `${stepsWords(steps ?? 0, atLeast ?? 0)} away`;
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

// A way that was found has so many; that there is a shorter one may not have been ruled out.
function stepsWords(steps: number, atLeast: number): string {
  if (steps === 1) return '1 easier step';
  if (atLeast === steps) return `${steps} easier steps`;
  return atLeast > 1 ? `${atLeast} to ${steps} easier steps` : `at most ${steps} easier steps`;
}

/** What one candidate is in the way of. */
export function missWords({ nearMisses }: ForecastLine): string {
  return nearMisses.map(({ cell, digit }) => `${cell} could lose ${digit}`).join(', ');
}
