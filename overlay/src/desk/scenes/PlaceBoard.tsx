import { useSignal } from '@preact/signals';
import { useDesk } from '../context.ts';
import type { Placing } from '../model/scenes.ts';
import { FrameNumbers } from './FrameNumbers.tsx';
import { FrameStage } from './FrameStage.tsx';
import { dragged, draggedSquare, isSquare } from './frame.ts';

/** Puts the board's frame where the board is in the scene's picture. */
export function PlaceBoard({ placing: { scene, frame } }: { placing: Placing }) {
  const { scenes } = useDesk();
  const keepsSquare = useSignal(isSquare(frame));
  return (
    <section class="place-board" aria-label={`The board in ${scene}`}>
      <p class="on-broadcast">The outline shows on the broadcast of {scene} until this is closed.</p>
      <FrameStage
        frame={frame}
        drag={keepsSquare.value ? draggedSquare : dragged}
        onChange={(next) => scenes.change(next)}
      />
      <div class="row">
        <FrameNumbers frame={frame} onChange={(next) => scenes.change(next)} />
        <label class="check">
          <input
            type="checkbox"
            checked={keepsSquare.value}
            onChange={(event) => {
              keepsSquare.value = event.currentTarget.checked;
            }}
          />
          Square in 16:9
        </label>
        <button type="button" class="main push" onClick={() => scenes.finish()}>
          Done
        </button>
      </div>
    </section>
  );
}
