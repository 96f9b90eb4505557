import type { ScreenView } from '../../wireScreen.ts';
import type { ScreenPhase } from '../model/screen.ts';

/** How following the screen goes, in a few words; empty where nothing is followed. */
export function screenWords(phase: ScreenPhase, view: ScreenView | null, isReached: boolean): string {
  if (phase === 'lost') return 'Screen lost';
  if (phase === 'choosing') return 'Choosing a screen';
  if (phase === 'placing') return 'Screen shown, not followed yet';
  if (phase === 'off') return '';
  if (!isReached) return 'Screen not read: the companion does not answer';
  switch (view?.status) {
    case 'gridNotFound':
      return 'Grid not found';
    case 'unsure':
      return 'Reading unsure';
    case 'otherPuzzle':
      return 'Another puzzle on the screen';
    default:
      return 'Following the screen';
  }
}

/** Whether all is as it should be. */
export function isFollowing(phase: ScreenPhase, view: ScreenView | null, isReached: boolean): boolean {
  return phase === 'following' && isReached && (view === null || view.status === 'following');
}

/** Cells in a line: a few by name, more by number. */
export function cellWords(names: readonly string[]): string {
  const most = 4;
  return names.length <= most
    ? names.join(', ')
    : `${names.slice(0, most).join(', ')} and ${names.length - most} more`;
}
