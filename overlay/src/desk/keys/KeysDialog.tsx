import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import { airKeys, boardKeys, cueKeys, type KeyEntry } from './keyList.ts';

export function KeysDialog() {
  const model = useDesk();
  const { settings } = model;
  return (
    <Modal title="Keys" class="keys-dialog" onClose={() => model.close()}>
      <div class="key-lists">
        <KeyList title="Board" entries={boardKeys} />
        <KeyList title="Next and On air" entries={airKeys} />
        <KeyList title="Cues" entries={cueKeys} />
      </div>
      <label class="check">
        <input
          type="checkbox"
          checked={settings.singleKeys.value}
          onChange={(event) => settings.useSingleKeys(event.currentTarget.checked)}
        />
        Single-letter keys. Without them digits are heard on the board alone; arrows, Ctrl keys and Escape
        stay.
      </label>
    </Modal>
  );
}

function KeyList({ title, entries }: { title: string; entries: readonly KeyEntry[] }) {
  return (
    <section>
      <h3>{title}</h3>
      <dl>
        {entries.map(({ keys, words }) => (
          <div key={keys}>
            <dt>
              <kbd>{keys}</kbd>
            </dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
