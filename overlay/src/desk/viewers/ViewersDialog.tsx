import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import { CallList } from './CallList.tsx';
import { DelayPart } from './DelayPart.tsx';
import { DoorPart } from './DoorPart.tsx';
import { LimitPart } from './LimitPart.tsx';
import './viewers.css';

/** What viewers may ask, how far behind the picture is that they see, and what they say to have found. */
export function ViewersDialog() {
  const model = useDesk();
  const view = model.viewers.view.value;
  const isOver = model.desk.value?.isOver ?? false;
  const isShut = !model.air.isPresenter.value;
  return (
    <Modal title="Viewers" class="viewers-dialog" onClose={() => model.close()}>
      {view ? (
        <>
          <LimitPart limits={view.limits} isShut={isShut} />
          <DelayPart view={view} isShut={isShut} />
          {model.viewers.door.value && <DoorPart view={model.viewers.door.value} isShut={isShut} />}
          <CallList calls={view.calls} />
          <footer class="row">
            <span class="hint">
              <span role="status">
                {isOver && 'The show was ended: the next puzzle begins another one. '}
              </span>
              {view.answers === 1 ? '1 answer' : `${view.answers} answers`} since the start. Names are not
              kept.
            </span>
            <button
              type="button"
              class="push"
              disabled={isShut}
              title="Forgets who asked and what was called; the next puzzle begins another show"
              onClick={() => model.viewers.endShow()}
            >
              End of the show
            </button>
          </footer>
        </>
      ) : (
        <p class="empty">Waiting for the companion.</p>
      )}
    </Modal>
  );
}
