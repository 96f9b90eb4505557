import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';

export function ClearDialog() {
  const model = useDesk();
  const clear = () => {
    model.board.clear();
    model.close();
  };
  return (
    <Modal title="Clear the grid?" class="clear-dialog" onClose={() => model.close()}>
      <p>Every digit and mark that you entered goes; the givens stay. Undo brings them back.</p>
      <div class="row end">
        <button type="button" class="main" onClick={clear}>
          Clear grid
        </button>
      </div>
    </Modal>
  );
}
