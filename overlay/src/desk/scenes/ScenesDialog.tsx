import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import { AddScene } from './AddScene.tsx';
import { PlaceBoard } from './PlaceBoard.tsx';
import './scenes.css';

/** The scenes of the broadcast, and where the board lies in each. */
export function ScenesDialog() {
  const model = useDesk();
  const { scenes } = model;
  const placing = scenes.placing.value;
  return (
    <Modal title="Scenes" class="scenes-dialog" onClose={() => model.close()}>
      <div class="scenes">
        <div>
          <ul class="scene-list">
            {scenes.scenes.value.map(({ name }) => (
              <li key={name}>
                <span class="name">{name}</span>
                <button
                  type="button"
                  aria-label={`Place the board in ${name}`}
                  aria-pressed={placing?.scene === name}
                  onClick={() => (placing?.scene === name ? scenes.finish() : scenes.place(name))}
                >
                  Place the board
                </button>
                <button
                  type="button"
                  aria-label={`Forget ${name}`}
                  disabled={name === 'main'}
                  onClick={() => scenes.forget(name)}
                >
                  Forget
                </button>
                <code>/overlay?scene={encodeURIComponent(name)}</code>
              </li>
            ))}
          </ul>
          <AddScene />
          <p class="hint">
            Each scene has its own overlay. Take the overlay link printed in the terminal and put{' '}
            <code>?scene=</code> with the scene's name before its <code>#</code>.
          </p>
        </div>
        {placing ? (
          <PlaceBoard key={placing.scene} placing={placing} />
        ) : (
          <p class="empty">Choose a scene to place the board in its picture.</p>
        )}
      </div>
    </Modal>
  );
}
