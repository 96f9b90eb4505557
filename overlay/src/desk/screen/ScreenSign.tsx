import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { Sign } from '../Sign.tsx';
import { isFollowing, screenWords } from './words.ts';

/** At the foot of the presenter's desk: how following the screen goes, and where it begins. */
export function ScreenSign() {
  const model = useDesk();
  const { screen } = model;
  const [phase, view, isReached] = [screen.phase.value, screen.view.value, screen.isReached.value];
  if (!screen.mayFollow.value) return null;
  const words = screenWords(phase, view, isReached);
  return (
    <>
      {words && (
        <Sign name="screen" isUp={isFollowing(phase, view, isReached)}>
          {words}
        </Sign>
      )}
      {phase === 'following' && (
        <button type="button" onClick={() => screen.stop()}>
          Stop following
        </button>
      )}
      <button type="button" aria-keyshortcuts="M" onClick={() => model.open('screen')}>
        My screen <KeyHint keys="M" />
      </button>
    </>
  );
}
