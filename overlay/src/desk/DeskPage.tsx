import { useEffect, useRef } from 'preact/hooks';
import { focusCell } from './board/BoardGrid.tsx';
import { DeskContext } from './context.ts';
import { Dialogs } from './Dialogs.tsx';
import { listenToKeys } from './keys/listen.ts';
import { CoHostLayout } from './layout/CoHostLayout.tsx';
import { PresenterLayout } from './layout/PresenterLayout.tsx';
import type { DeskModel } from './model/model.ts';
import { StatusLine } from './StatusLine.tsx';
import './desk.css';
import './layout/withSheet.css';
import './controls.css';

/** The desk of the presenter or of a co-host, with one line at its foot. */
export function DeskPage({ model }: { model: DeskModel }) {
  const page = useRef<HTMLDivElement>(null);
  const desk = model.desk.value;
  const Layout = desk?.role === 'coHost' ? CoHostLayout : PresenterLayout;

  // Both may be open in one browser, side by side.
  useEffect(() => {
    if (desk) document.title = desk.role === 'presenter' ? "Presenter's desk" : "Co-host's desk";
  }, [desk?.role]);

  useEffect(() => {
    const grid = () => page.current?.querySelector('[role="grid"]') ?? null;
    return listenToKeys(document, model, {
      focusFilter: () => page.current?.querySelector<HTMLElement>('#filter')?.focus(),
      focusCueText: () => page.current?.querySelector<HTMLElement>('#cue-text')?.focus(),
      focusHeld: () => page.current?.querySelector<HTMLElement>('.screen-call.held')?.focus(),
      isOnRunSheet: () =>
        page.current?.querySelector('.run-sheet-area')?.contains(document.activeElement) ?? false,
      focusCursor: () => focusCell(grid(), model.board.selection.value.cursor),
    });
  }, [model]);

  return (
    <DeskContext.Provider value={model}>
      <div class="desk" ref={page}>
        {desk ? (
          <Layout desk={desk} />
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
