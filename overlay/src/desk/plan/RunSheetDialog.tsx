import type { RunSheetView } from '../../wirePlan.ts';
import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import { clock } from './clock.ts';
import { Done } from './Done.tsx';
import { FeaturedRules } from './FeaturedRules.tsx';
import { KeptNotes } from './KeptNotes.tsx';
import { Passages } from './Passages.tsx';
import { Turns } from './Turns.tsx';

/** The way on from the board as it is, with the rules that it is to show. */
export function RunSheetDialog() {
  const model = useDesk();
  const { plan } = model;
  const view = plan.view.value;
  return (
    <Modal title="Run sheet" class="run-sheet-dialog" onClose={() => model.close()}>
      <FeaturedRules
        featured={plan.featured.value}
        disabled={!plan.mayFeature.value}
        onChange={(featured) => plan.feature(featured)}
      />
      <p class="way" role="status">
        {words(view, plan.isBehind.value)}
      </p>
      {view && <Done done={view.done} />}
      {view && <KeptNotes kept={view.kept} />}
      {view?.sheet && (
        <>
          <Turns turns={view.sheet.featured} featured={plan.featured.value} />
          {view.sheet.talkingPoints
            .filter(({ step }) => step === null)
            .map(({ text }) => (
              <p class="point" key={text}>
                {text}
              </p>
            ))}
          <Passages sheet={view.sheet} notes={view.notes} />
        </>
      )}
    </Modal>
  );
}

function words(view: RunSheetView | null, isBehind: boolean): string {
  if (view?.blocked && !isBehind) return view.blocked;
  const sheet = view?.sheet;
  if (!sheet) return 'The way on is being planned.';
  const count = sheet.steps.length === 1 ? '1 step' : `${sheet.steps.length} steps`;
  const length =
    sheet.steps.length === 0
      ? 'The grid is full.'
      : `${count} from here, ${clock(sheet.seconds)} of speaking.`;
  const end = sheet.isComplete ? '' : ' The ladder leads no further than that.';
  return `${length}${end}${isBehind ? ' It is being planned anew.' : ''}`;
}
