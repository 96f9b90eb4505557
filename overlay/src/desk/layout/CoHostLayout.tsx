import type { DeskView } from '../../wire.ts';
import { AirArea } from '../air/AirArea.tsx';
import { BoardArea } from '../board/BoardArea.tsx';
import { useDesk } from '../context.ts';
import { CuesArea } from '../cues/CuesArea.tsx';
import { NextArea } from '../next/NextArea.tsx';
import { RunSheetArea } from '../plan/RunSheetArea.tsx';
import { ViewersArea } from '../viewers/ViewersArea.tsx';
import { WatchArea } from '../watch/WatchArea.tsx';

/** A co-host's areas: the board to look at, what could be said in Next, and the most room for what is to be said in Cues. */
export function CoHostLayout({ desk }: { desk: DeskView }) {
  const isSheetOpen = useDesk().settings.runSheet.value;
  return (
    <main class={`co-host${isSheetOpen ? ' with-sheet' : ''}`}>
      <h1 class="unseen">Co-host's desk</h1>
      <div class="column">
        <BoardArea desk={desk} />
        <div class="pair">
          <WatchArea notes={desk.watch} proof={desk.proof} />
          <ViewersArea />
        </div>
      </div>
      <div class="column">
        <NextArea />
        {isSheetOpen && <RunSheetArea />}
      </div>
      <div class="column">
        <CuesArea />
        <AirArea />
      </div>
    </main>
  );
}
