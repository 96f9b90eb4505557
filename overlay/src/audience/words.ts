import type { LineState } from '../connection/line.ts';
import type { AudienceAnswer, AudienceView } from '../wireAudience.ts';

/** Why hints are not to be had now, or null. */
export function noHintsWords(view: AudienceView | null): string | null {
  if (!view) return null;
  if (!view.asks.open) return 'Hints are off for now.';
  return view.isQuiet ? 'No hints while something is on air.' : null;
}

/** What an answer says on the page; where the companion says nothing, why that may be. */
export function answerWords(answer: AudienceAnswer, view: AudienceView | null): string[] {
  if (answer.words.length > 0) return answer.words;
  return [noHintsWords(view) ?? 'Not answered: wait a few seconds between two asks.'];
}

/** What stands in the place of the board, as long as there is none. */
export function waitingWords(state: LineState, view: AudienceView | null): string {
  if (state !== 'connected' || !view) return 'Connecting…';
  if (view.delaySeconds === 0) return 'The presenter has no puzzle on the board yet.';
  return `The board comes ${secondsNamed(view.delaySeconds)} after the presenter shows it, as on the picture.`;
}

/** How old the board is. */
export function delayWords({ delaySeconds }: AudienceView): string {
  return delaySeconds === 0
    ? 'The board as it is now.'
    : `The board as of ${secondsNamed(delaySeconds)} ago.`;
}

function secondsNamed(seconds: number): string {
  return seconds === 1 ? '1 second' : `${seconds} seconds`;
}
