import { useRef } from 'preact/hooks';
import type { RunSheet, RunSheetView } from '../../wirePlan.ts';
import { Area } from '../Area.tsx';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { clock } from './clock.ts';
import { Done } from './Done.tsx';
import { Features } from './Features.tsx';
import { KeptNotes } from './KeptNotes.tsx';
import { Passages } from './Passages.tsx';
import { useSheetFocus } from './useSheetFocus.ts';
import './plan.css';

/** The way through the puzzle beside the board: what was done, what comes now with what to say, and what comes later. */
export function RunSheetArea() {
  const { plan } = useDesk();
  const view = plan.shown.value;
  const sheet = view?.sheet ?? null;
  const area = useRef<HTMLElement>(null);
  const way = useRef<HTMLDivElement>(null);
  const steer = useSheetFocus(area, way, sheet?.steps[0]?.number ?? null);
  return (
    <Area name="Run sheet" class="run-sheet-area" focusable={area} aside={<Close />}>
      <p class="way" role="status">
        {words(plan.view.value, plan.isBehind.value)}
      </p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: arrow keys go from one of its controls to the next */}
      <div class="sheet-way" ref={way} onKeyDown={steer}>
        <Features turns={sheet?.featured ?? null} />
        {view && <KeptNotes kept={view.kept} />}
        {view && <Done done={view.done} />}
        {view && sheet && (
          <>
            {sheet.talkingPoints
              .filter(({ step }) => step === null)
              .map(({ text }) => (
                <p class="point" key={text}>
                  {text}
                </p>
              ))}
            <Passages sheet={sheet} notes={view.notes} />
          </>
        )}
      </div>
    </Area>
  );
}

function Close() {
  const { settings } = useDesk();
  return (
    <button type="button" aria-keyshortcuts="O" onClick={() => settings.showRunSheet(false)}>
      Close <KeyHint keys="O" />
    </button>
  );
}

function words(view: RunSheetView | null, isBehind: boolean): string {
  if (view?.blocked && !isBehind) return view.blocked;
  const sheet = view?.sheet;
  if (!sheet) return 'The way on is being planned.';
  return `${wayWords(sheet)}${isBehind ? ' It is being planned anew.' : ''}`;
}

function wayWords({ steps, seconds, isComplete }: RunSheet): string {
  const [now] = steps;
  const last = steps.at(-1);
  if (!now || !last) return isComplete ? 'The grid is full.' : 'The ladder leads no further from here.';
  const count = steps.length === 1 ? '1 step' : `${steps.length} steps`;
  const place =
    now.number > 1
      ? `Step ${now.number} of ${last.number} at ${clock(now.at)}; ${clock(seconds)} of speaking left.`
      : `${count} from here, ${clock(seconds)} of speaking.`;
  return isComplete ? place : `${place} The ladder leads no further than that.`;
}
