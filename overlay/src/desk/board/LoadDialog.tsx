import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Correction, FeaturedRule } from '../../wirePlan.ts';
import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import { corrected } from '../model/vet.ts';
import { FeaturedRules } from '../plan/FeaturedRules.tsx';
import { Credits } from './Credits.tsx';
import { Vetted } from './Vetted.tsx';
import './loadDialog.css';

/** Takes a puzzle with its credit, vetted if wanted. Where it is refused, the dialog stays with every reason. */
export function LoadDialog() {
  const model = useDesk();
  const { vet } = model;
  const grid = useSignal('');
  const featured = useSignal<readonly FeaturedRule[]>([]);
  const reasons = useSignal<readonly string[]>([]);
  // What was vetted is of the dialog that was open before.
  useEffect(() => vet.forget(), [vet]);

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
    if (reply.refusal !== null) return;
    if (featured.value.length > 0) model.plan.feature(featured.value);
    model.close();
  };

  const type = (text: string) => {
    grid.value = text;
    vet.forget();
  };
  const correct = (puzzle: string, correction: Correction) => {
    grid.value = corrected(puzzle, correction);
    void vet.ask(grid.value, featured.value);
  };
  const result = vet.result.value;

  return (
    <Modal title="Load a puzzle" class="load-dialog" onClose={() => model.close()}>
      <form onSubmit={load}>
        <label>
          Grid
          <small>81 characters or nine lines; a full stop, 0 or a blank for an open cell</small>
          <textarea
            name="grid"
            data-first
            class={isOneLine(grid.value) ? 'one-line' : ''}
            rows={9}
            cols={30}
            spellcheck={false}
            required
            value={grid.value}
            onInput={(event) => type(event.currentTarget.value)}
          />
        </label>
        <div class="fields">
          <Credits />
          <FeaturedRules
            featured={featured.value}
            onChange={(changed) => {
              featured.value = changed;
              vet.forget();
            }}
          />
          <p>The puzzle on the board is replaced.</p>
        </div>
        <section class="vetted" aria-live="polite" aria-label="Vetting">
          {result !== null ? (
            <Vetted result={result} onCorrect={(correction) => correct(result.puzzle, correction)} />
          ) : (
            vet.grid.value !== null && <p>{vet.refusal.value || 'Vetting: this takes a few seconds.'}</p>
          )}
        </section>
        <ul class="reasons" role="alert">
          {reasons.value.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
        <div class="row end">
          <button
            type="button"
            disabled={grid.value.trim() === ''}
            onClick={() => void vet.ask(grid.value, featured.value)}
          >
            Vet it
          </button>
          <button type="submit" class="main">
            Load
          </button>
        </div>
      </form>
    </Modal>
  );
}

/** All cells in one line are shown nine by nine, as the grid has them. */
function isOneLine(grid: string): boolean {
  return grid.trim().length <= 81 && !/\n/.test(grid.trim());
}

/** A refusal gives all its reasons in one text, a sentence each. */
export function reasonsIn(refusal: string): string[] {
  return refusal
    .replace(/([.!?]) (?=[A-Z0-9])/g, '$1\n')
    .split('\n')
    .filter(Boolean);
}
