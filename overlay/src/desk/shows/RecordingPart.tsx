import { useEffect, useState } from 'preact/hooks';
import { timeText } from '../../grid/time.ts';
import type { Recording } from '../../wireShows.ts';

/** A circle records, two bars pause, a square has stopped, all filled: told apart by shape. */
const shapes = {
  running: 'M6 1.5a4.5 4.5 0 1 0 0.01 0z',
  paused: 'M2 1.5h3v9h-3zM7 1.5h3v9h-3z',
  stopped: 'M1.5 1.5h9v9h-9z',
};

const words = { running: 'Recording', paused: 'Recording pauses', stopped: 'Recorded' };

/** How long the recording has run since its key was pressed. */
export function RecordingPart({ recording }: { recording: Recording }) {
  const { phase, seconds, since } = recording;
  const [now, tick] = useState(() => Date.now());
  useEffect(() => {
    if (phase !== 'running') return;
    tick(Date.now());
    const clock = setInterval(() => tick(Date.now()), 1000);
    return () => clearInterval(clock);
  }, [phase, since]);
  if (phase === 'none') return null;
  const running = since === null ? 0 : Math.max(0, (now - Date.parse(since)) / 1000);
  return (
    <p class={`sign recording ${phase}`}>
      <svg viewBox="0 0 12 12" aria-hidden="true" focusable="false">
        <path d={shapes[phase]} fill="currentColor" />
      </svg>
      {words[phase]} {timeText(seconds + running)}
    </p>
  );
}
