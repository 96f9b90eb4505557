import type { Playback } from './playback.ts';

/** What a key does to a replay, or null where it is none of its keys. */
export function replayKey(key: string): ((playback: Playback) => void) | null {
  switch (key) {
    case ' ':
      return (playback) => playback.toggle();
    case 'ArrowRight':
      return (playback) => playback.step(1);
    case 'ArrowLeft':
      return (playback) => playback.step(-1);
    case 'PageDown':
      return (playback) => playback.step(10);
    case 'PageUp':
      return (playback) => playback.step(-10);
    case 'Home':
      return (playback) => playback.goTo(0);
    case 'End':
      return (playback) => playback.step(playback.count);
    case '+':
    case '=':
      return (playback) => playback.faster(1);
    case '-':
      return (playback) => playback.faster(-1);
    case '1':
      return (playback) => playback.setSpeed(1);
    case 'w':
    case 'W':
      return (playback) => playback.cutWaits(!playback.cutsWaits);
    default:
      return null;
  }
}
