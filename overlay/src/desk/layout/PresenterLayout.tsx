import type { DeskView } from '../../wire.ts';
import { AirArea } from '../air/AirArea.tsx';
import { BoardArea } from '../board/BoardArea.tsx';
import { useDesk } from '../context.ts';
import { CueCall } from '../cues/CueCall.tsx';
import { CuesArea } from '../cues/CuesArea.tsx';
import { NextArea } from '../next/NextArea.tsx';
import { RunSheetArea } from '../plan/RunSheetArea.tsx';
import { ScreenCall } from '../screen/ScreenCall.tsx';
import { WatchArea } from '../watch/WatchArea.tsx';

/** The presenter's areas. A cue that is called out takes its room from Next, never from the board. */
export function PresenterLayout({ desk }: { desk: DeskView }) {
  const isSheetOpen = useDesk().settings.runSheet.value;
  return (
    <main class={`presenter${isSheetOpen ? ' with-sheet' : ''}`}>
      <h1 class="unseen">Presenter's desk</h1>
      <div class="column">
        <BoardArea desk={desk} />
      </div>
      <div class="column">
        <ScreenCall />
        <CueCall />
        <NextArea />
        {isSheetOpen && <RunSheetArea />}
        <CuesArea />
      </div>
      <div class="column">
        <AirArea />
        <WatchArea notes={desk.watch} proof={desk.proof} />
      </div>
    </main>
  );
}
