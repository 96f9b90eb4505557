import { useRef } from 'preact/hooks';
import { cellLabel } from '../board/cellLabel.ts';
import { cellAt, neighbour } from '../grid/cells.ts';
import type { StageCell } from '../wire.ts';
import type { AudienceModel } from './model.ts';

const nine = [0, 1, 2, 3, 4, 5, 6, 7, 8];

const steps: Readonly<Record<string, readonly [down: number, right: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/** The board as something to read cell by cell and to choose a cell of: by a tap, or by arrow keys and Enter. */
export function AudienceGrid({ model, cells }: { model: AudienceModel; cells: readonly StageCell[] }) {
  const grid = useRef<HTMLDivElement>(null);
  const cursor = useRef(0);
  const chosen = model.chosen.value;

  const go = (cell: number) => {
    cursor.current = cell;
    for (const each of grid.current?.querySelectorAll<HTMLElement>('[data-cell]') ?? []) {
      const isCursor = each.dataset.cell === `${cell}`;
      each.tabIndex = isCursor ? 0 : -1;
      if (isCursor) each.focus();
    }
  };

  const press = (event: KeyboardEvent) => {
    const step = steps[event.key];
    if (step) go(neighbour(cursor.current, ...step));
    else if (event.key === 'Enter' || event.key === ' ') model.choose(cursor.current);
    else if (event.key === 'Escape') model.choose(null);
    else return;
    event.preventDefault();
  };

  const tap = (event: MouseEvent) => {
    const cell = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-cell]') : null;
    if (!cell) return;
    go(Number(cell.dataset.cell));
    model.choose(cursor.current);
  };

  return (
    <div ref={grid} class="audience-grid" role="grid" aria-label="Board" onKeyDown={press} onClick={tap}>
      {nine.map((row) => (
        // biome-ignore lint/a11y/useFocusableInteractive: the cells take the focus, not their rows
        <div key={row} role="row">
          {nine.map((column) => {
            const index = cellAt(row, column);
            const cell = cells[index];
            return (
              cell && (
                <div
                  key={index}
                  role="gridcell"
                  data-cell={index}
                  aria-label={cellLabel(index, cell)}
                  aria-selected={chosen === index}
                  tabIndex={cursor.current === index ? 0 : -1}
                />
              )
            );
          })}
        </div>
      ))}
    </div>
  );
}
