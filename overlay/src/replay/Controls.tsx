import { timeText } from '../grid/time.ts';
import type { Position } from './model.ts';
import type { Playback } from './playback.ts';

interface Props {
  position: Position;
  act: (change: (playback: Playback) => void) => void;
  onHide: () => void;
}

/** Where a replay is, and its buttons. */
export function Controls({ position, act, onHide }: Props) {
  const { title, index, count, moment, isPlaying, speed, cutsWaits } = position;
  return (
    <nav class="replay-controls" aria-label="Replay">
      <button type="button" onClick={() => act((playback) => playback.step(-1))} aria-label="Step back">
        ←
      </button>
      <button type="button" onClick={() => act((playback) => playback.toggle())}>
        {isPlaying ? 'Pause' : 'Play'}
      </button>
      <button type="button" onClick={() => act((playback) => playback.step(1))} aria-label="Step on">
        →
      </button>
      <input
        type="range"
        aria-label="Step"
        min={0}
        max={Math.max(0, count - 1)}
        value={index}
        onInput={(event) => act((playback) => playback.goTo(Number(event.currentTarget.value)))}
      />
      <span class="place">
        {index + 1} of {count}, {timeText(moment?.at ?? 0)}
        {moment?.recorded !== null &&
          moment?.recorded !== undefined &&
          `, recorded at ${timeText(moment.recorded)}`}
      </span>
      <button type="button" onClick={() => act((playback) => playback.faster(-1))} aria-label="Slower">
        −
      </button>
      <span>{Math.round(speed * 100) / 100}×</span>
      <button type="button" onClick={() => act((playback) => playback.faster(1))} aria-label="Faster">
        +
      </button>
      <button
        type="button"
        aria-pressed={cutsWaits}
        onClick={() => act((playback) => playback.cutWaits(!cutsWaits))}
      >
        Short waits <kbd>W</kbd>
      </button>
      <button type="button" onClick={onHide}>
        Hide <kbd>H</kbd>
      </button>
      <span class="title">Replay{title === '' ? '' : `: ${title}`}</span>
    </nav>
  );
}
