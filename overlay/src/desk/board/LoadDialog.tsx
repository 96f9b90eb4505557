import { useSignal } from '@preact/signals';
import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';

/** Takes a puzzle with its credit. Where it is refused, the dialog stays with every reason. */
export function LoadDialog() {
  const model = useDesk();
  const reasons = useSignal<readonly string[]>([]);

  const load = async (event: SubmitEvent) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget as HTMLFormElement);
    const text = (name: string) => String(form.get(name) ?? '');
    const reply = await model.asking.askQuietly(
      'LoadPuzzle',
      text('grid'),
      text('title'),
      text('setter'),
      text('link'),
    );
    reasons.value = reasonsIn(reply.refusal ?? '');
    if (reply.refusal === null) model.close();
  };

  return (
    <Modal title="Load a puzzle" class="load-dialog" onClose={() => model.close()}>
      <form onSubmit={load}>
        <label>
          Grid
          <small>81 characters or nine lines; a full stop, 0 or a blank for an open cell</small>
          <textarea name="grid" rows={9} cols={30} spellcheck={false} required />
        </label>
        <div class="fields">
          <label>
            Title
            <input name="title" autocomplete="off" />
          </label>
          <label>
            Set by
            <input name="setter" autocomplete="off" />
          </label>
          <label>
            Link
            <input name="link" type="url" placeholder="https://" autocomplete="off" />
          </label>
          <p>The puzzle on the board is replaced.</p>
        </div>
        <ul class="reasons" role="alert">
          {reasons.value.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
        <div class="row end">
          <button type="submit" class="main">
            Load
          </button>
        </div>
      </form>
    </Modal>
  );
}

/** A refusal gives all its reasons in one text, a sentence each. */
export function reasonsIn(refusal: string): string[] {
  return refusal
    .replace(/([.!?]) (?=[A-Z0-9])/g, '$1\n')
    .split('\n')
    .filter(Boolean);
}
