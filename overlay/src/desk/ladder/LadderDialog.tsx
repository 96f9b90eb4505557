import type { LadderView } from '../../wireLadder.ts';
import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import { Families } from './Families.tsx';
import { Rungs } from './Rungs.tsx';
import './ladder.css';

/** Which rules are looked for: the families that are on, up to the last rung that counts. */
export function LadderDialog() {
  const model = useDesk();
  const view = model.ladder.view.value;
  return (
    <Modal title="Ladder" class="ladder-dialog" onClose={() => model.close()}>
      {view === null ? (
        <p class="empty">Waiting for the companion.</p>
      ) : (
        <fieldset class="ladder" disabled={!model.ladder.mayCut.value}>
          <legend class="unseen">What is looked for</legend>
          <div>
            <Last view={view} />
            <Families families={view.families} />
          </div>
          <Rungs rungs={view.rungs} />
        </fieldset>
      )}
    </Modal>
  );
}

function Last({ view }: { view: LadderView }) {
  const { ladder } = useDesk();
  return (
    <label class="last">
      Look for nothing past
      <select value={view.last ?? ''} onChange={(event) => ladder.stopAt(event.currentTarget.value || null)}>
        <option value="">the end of the ladder</option>
        {view.rungs.map(({ rule, name }) => (
          <option key={rule} value={rule}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
