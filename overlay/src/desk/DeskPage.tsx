import { useEffect, useRef } from 'preact/hooks';
import { AirArea } from './air/AirArea.tsx';
import { BoardArea } from './board/BoardArea.tsx';
import { focusCell } from './board/BoardGrid.tsx';
import { DeskContext } from './context.ts';
import { Dialogs } from './Dialogs.tsx';
import { listenToKeys } from './keys/listen.ts';
import type { DeskModel } from './model/model.ts';
import { NextArea } from './next/NextArea.tsx';
import { StatusLine } from './StatusLine.tsx';
import { WatchArea } from './watch/WatchArea.tsx';
import './desk.css';
import './controls.css';

/** The desk of the presenter or of a co-host: Board, Next, Watch and On air, with one line at its foot. */
export function DeskPage({ model }: { model: DeskModel }) {
  const page = useRef<HTMLDivElement>(null);
  const desk = model.desk.value;

  useEffect(() => {
    const grid = () => page.current?.querySelector('[role="grid"]') ?? null;
    return listenToKeys(document, model, {
      focusFilter: () => page.current?.querySelector<HTMLElement>('#filter')?.focus(),
      focusCursor: () => focusCell(grid(), model.board.selection.value.cursor),
    });
  }, [model]);

  return (
    <DeskContext.Provider value={model}>
      <div class="desk" ref={page}>
        {desk ? (
          <main>
            <h1 class="unseen">{desk.role === 'presenter' ? "Presenter's desk" : "Co-host's desk"}</h1>
            <BoardArea desk={desk} />
            <NextArea />
            <AirArea />
            <WatchArea notes={desk.watch} />
          </main>
        ) : (
          <main class="waiting">
            <h1 class="unseen">Desk</h1>
            <p>{model.line.refusal.value || 'Waiting for the companion.'}</p>
          </main>
        )}
        <StatusLine />
        <Dialogs />
      </div>
    </DeskContext.Provider>
  );
}
