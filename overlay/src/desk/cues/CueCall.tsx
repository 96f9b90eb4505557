import type { CallOut } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { aboutWords } from './gradeWords.ts';
import { StageShape } from './StageShape.tsx';
import { stages } from './stages.ts';

/** The cue that is called out to the presenter: ready to stand by, or to go now. */
export function CueCall() {
  const { cues } = useDesk();
  const called = cues.called.value;
  return (
    <div class="cue-call-place" role="status">
      {called && <Called called={called} more={cues.alsoCalled.value} />}
    </div>
  );
}

function Called({ called, more }: { called: CallOut; more: number }) {
  const { cues, air } = useDesk();
  const { stage, text, seconds, deduction } = called;
  const passed = deduction?.passed;
  return (
    <section class={`cue-call ${stage}`} aria-label="Cue for the presenter">
      <header>
        <p class="cue-plate">
          <StageShape stage={stage} /> {stages[stage].name}
        </p>
        <p>
          {aboutWords(called)} · {Math.round(seconds)} s
        </p>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: long words are scrolled by the keyboard too */}
      <p class="cue-words" tabIndex={0}>
        {text}
      </p>
      {passed && <p class="blocked">This deduction {passed}.</p>}
      <div class="row">
        {deduction && (
          <button
            type="button"
            class="main"
            disabled={!air.mayAir.value || passed !== null}
            aria-keyshortcuts="T"
            onClick={() => cues.takeOnAir(called)}
          >
            Take on air <KeyHint keys="T" />
          </button>
        )}
        <button type="button" aria-keyshortcuts="K" onClick={() => void cues.turn(called, 'done')}>
          Done <KeyHint keys="K" />
        </button>
        {more > 0 && <small>{more === 1 ? '1 more is called' : `${more} more are called`}</small>}
      </div>
    </section>
  );
}
