import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { RecordingPart } from './RecordingPart.tsx';

const keyWords = { none: 'Recording starts now', running: 'Pause', paused: 'Go on' } as const;

const hints = {
  none: 'Press it when your recorder starts, so that chapters fit the video. It can be corrected later.',
  running: 'Pause when your recorder pauses, and stop when it stops, so that chapters fit the video.',
  paused: 'Go on when your recorder goes on, so that chapters fit the video.',
  stopped: 'Another one begins at 0:00: chapters are of the last recording of a show.',
} as const;

/** The keys of the recording's clock. The companion records nothing: it only notes when the recorder does. */
export function RecordingKeys() {
  const model = useDesk();
  const recording = model.desk.value?.recording;
  if (!recording) return null;
  const { phase } = recording;
  return (
    <fieldset class="recording-keys">
      <legend>Recording</legend>
      <div class="row">
        {phase === 'stopped' ? (
          <button type="button" onClick={() => model.shows.startRecording()}>
            Another recording starts now
          </button>
        ) : (
          <button type="button" class="main" aria-keyshortcuts="G" onClick={() => model.shows.keyRecording()}>
            {keyWords[phase]} <KeyHint keys="G" />
          </button>
        )}
        {(phase === 'running' || phase === 'paused') && (
          <button type="button" onClick={() => model.shows.stopRecording()}>
            Stop
          </button>
        )}
        <RecordingPart recording={recording} />
      </div>
      <p class="hint">{hints[phase]}</p>
    </fieldset>
  );
}
