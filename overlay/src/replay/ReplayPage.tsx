import { useEffect, useState } from 'preact/hooks';
import { StagePage } from '../stage/StagePage.tsx';
import { Controls } from './Controls.tsx';
import { replayKey } from './keys.ts';
import type { ReplayModel } from './model.ts';
import './replay.css';

/** Seconds between two looks at the clock: some 15 a second, more than moments can be asked for. */
const look = 0.066;

interface Props {
  model: ReplayModel;
  /** Why the server does not let the page in; empty while it does. */
  refusal: string;
}

/** A stage that plays a stored show. Its line of controls is shown until H hides it, so that the stage alone can be recorded. */
export function ReplayPage({ model, refusal }: Props) {
  const [showsControls, showControls] = useState(model.startsWithControls);
  useEffect(() => {
    let last = performance.now();
    const clock = setInterval(() => {
      const now = performance.now();
      model.tick((now - last) / 1000);
      last = now;
    }, look * 1000);
    const heard = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const act = replayKey(event.key);
      // A button that has the focus takes the space bar for itself.
      if (event.key === ' ' && event.target instanceof HTMLButtonElement) return;
      if (act) model.control(act);
      else if (event.key.toLowerCase() === 'h') showControls((on) => !on);
      else return;
      event.preventDefault();
    };
    document.addEventListener('keydown', heard);
    return () => {
      clearInterval(clock);
      document.removeEventListener('keydown', heard);
    };
  }, [model]);
  const position = model.position.value;
  return (
    <>
      <StagePage model={model.stage} refusal={refusal || model.refusal.value} />
      {position && showsControls && (
        <Controls
          position={position}
          act={(change) => model.control(change)}
          onHide={() => showControls(false)}
        />
      )}
    </>
  );
}
