import { useEffect, useId, useRef } from 'preact/hooks';
import { useDesk } from '../context.ts';
import { listBox } from '../listBox.ts';
import { CueRow } from './CueRow.tsx';

/** The list itself, which takes the focus as a whole. */
export function CueRows() {
  const { cues } = useDesk();
  const list = useRef<HTMLDivElement>(null);
  const ids = useId();
  const picked = cues.picked.value;
  const elementId = (id: number) => `${ids}-${id}`;

  useEffect(() => {
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' });
  }, [picked?.id, cues.callOuts.value]);

  const pick = (event: MouseEvent) => {
    const row = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-cue]') : null;
    if (row) cues.pick(Number(row.dataset.cue));
  };

  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the group around it hears the keys
    // biome-ignore lint/a11y/noStaticElementInteractions: its role comes with the rest of a list box
    <div
      ref={list}
      class="cue-rows"
      {...listBox('Cue list', cues.callOuts.value.length === 0, picked ? elementId(picked.id) : undefined)}
      onClick={pick}
    >
      {cues.callOuts.value.length === 0 && (
        <p class="empty">Nothing is listed. Choose a deduction in Next, or write a talking point.</p>
      )}
      {cues.callOuts.value.map((callOut) => (
        <CueRow
          key={callOut.id}
          elementId={elementId(callOut.id)}
          callOut={callOut}
          isPicked={callOut.id === picked?.id}
        />
      ))}
    </div>
  );
}
