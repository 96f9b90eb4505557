import type { OpenDeduction } from '../../wire.ts';

interface Props {
  elementId: string | undefined;
  deduction: OpenDeduction;
  isChosen: boolean;
}

/** One open deduction in the list. */
export function Deduction({ elementId, deduction, isChosen }: Props) {
  const { id, short, seconds, unseen, since, assumesOneSolution } = deduction;
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: the listbox holds the focus and names its active option
    <div role="option" class="deduction" id={elementId} data-id={id} aria-selected={isChosen}>
      <span class="short">{short}</span>
      <span class="facts">
        {Math.round(seconds)} s{since > 0 && <> · open for {since === 1 ? '1 entry' : `${since} entries`}</>}
        {unseen.length > 0 && <> · rests on {unseen.length} unseen</>}
        {assumesOneSolution && <> · rests on a single solution</>}
      </span>
    </div>
  );
}
