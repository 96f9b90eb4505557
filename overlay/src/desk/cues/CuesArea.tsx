import { useRef } from 'preact/hooks';
import { Area } from '../Area.tsx';
import { useDesk } from '../context.ts';
import { CueRows } from './CueRows.tsx';
import { CuesOver } from './CuesOver.tsx';
import { CueTools } from './CueTools.tsx';
import { CueWriter } from './CueWriter.tsx';
import { steer } from './steer.ts';
import './cues.css';

/** What co-hosts have ready for the presenter to say, in order; nobody outside the desk sees it. */
export function CuesArea() {
  const model = useDesk();
  const text = useRef<HTMLInputElement>(null);
  const picked = model.cues.picked.value;
  const focusText = () => text.current?.focus();
  return (
    <Area name="Cues" class="cues-area" aside={<CuesOver />}>
      <CueWriter text={text} />
      <div
        class="cue-board"
        role="group"
        aria-label="The cues in order"
        onKeyDown={(event) => steer(event, model, focusText)}
      >
        <CueRows />
        {picked && <CueTools callOut={picked} focusText={focusText} />}
      </div>
    </Area>
  );
}
