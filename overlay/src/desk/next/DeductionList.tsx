import { useEffect, useId, useRef } from 'preact/hooks';
import type { NextView } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { listBox } from '../listBox.ts';
import type { RuleGroup } from '../model/finder.ts';
import { Deduction } from './Deduction.tsx';

/** The deductions by rule, in ladder order. Up and Down choose; so does a click. */
export function DeductionList() {
  const { next } = useDesk();
  const list = useRef<HTMLDivElement>(null);
  const ids = useId();
  const chosen = next.chosen.value;

  // The list follows what stands by, wherever it was chosen.
  useEffect(() => {
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' });
  }, [chosen, next.found.value]);

  const steer = (event: KeyboardEvent) => {
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
    event.preventDefault();
    next.step(event.key === 'ArrowDown' ? 1 : -1);
  };
  const choose = (event: MouseEvent) => {
    const option = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-id]') : null;
    if (option?.dataset.id !== undefined) next.choose(option.dataset.id);
  };

  // The deductions' own texts hold blanks and cannot name elements.
  const elementIds = new Map(next.found.value.map(({ id }, place) => [id, `${ids}-${place}`]));
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: its role comes with the rest of a list box
    <div
      ref={list}
      class="deductions"
      {...listBox(
        'Open deductions',
        next.groups.value.length === 0,
        chosen === null ? undefined : elementIds.get(chosen),
      )}
      onKeyDown={steer}
      onClick={choose}
    >
      {next.groups.value.length === 0 && <p class="empty">{emptyWords(next.view.value)}</p>}
      {next.groups.value.map((group) => (
        <Group key={group.rule} group={group} chosen={chosen} elementIds={elementIds} />
      ))}
    </div>
  );
}

interface GroupProps {
  group: RuleGroup;
  chosen: string | null;
  elementIds: ReadonlyMap<string, string>;
}

function Group({ group, chosen, elementIds }: GroupProps) {
  const heading = useId();
  return (
    <div role="group" aria-labelledby={heading}>
      <div class="rule" id={heading} role="presentation">
        {group.name} <small>{group.deductions.length}</small>
      </div>
      {group.deductions.map((deduction) => (
        <Deduction
          key={deduction.id}
          elementId={elementIds.get(deduction.id)}
          deduction={deduction}
          isChosen={deduction.id === chosen}
        />
      ))}
    </div>
  );
}

function emptyWords(view: NextView | null): string {
  if (view === null) return 'Waiting for the first look at the board.';
  if (view.deductions.length > 0) return 'Nothing matches the filter.';
  return view.goesOn
    ? 'Nothing easy is open: looking further.'
    : 'No rule of the ladder finds anything here.';
}
