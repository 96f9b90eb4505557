import { useRef } from 'preact/hooks';
import { cellLabel } from '../../board/cellLabel.ts';
import { cellAt, cellNamed } from '../../grid/cells.ts';
import type { CellCalls, DeskCell, DeskView } from '../../wire.ts';
import { useDesk } from '../context.ts';
import { only, toggled, withCell } from '../model/selection.ts';
import { callWords } from '../viewers/words.ts';
import { GridCell } from './GridCell.tsx';

const nine = [0, 1, 2, 3, 4, 5, 6, 7, 8];

/** The grid as something to choose cells in: by arrow keys, by clicking, and by drawing over them. */
export function BoardGrid({ desk, calls }: { desk: DeskView; calls: readonly CellCalls[] }) {
  const { board } = useDesk();
  const isDrawing = useRef(false);
  const { cursor, cells: chosen } = board.selection.value;
  const writing = new Set(desk.writing.map(cellNamed));
  const called = new Map(calls.map((each) => [cellNamed(each.cell), callWords(each)]));

  const press = (event: PointerEvent) => {
    const cell = cellUnder(event);
    if (cell === null || event.button !== 0) return;
    event.preventDefault();
    const touched = event.target as Element;
    // A finger would hold on to the cell it first touched, and never reach another.
    if (touched.hasPointerCapture(event.pointerId)) touched.releasePointerCapture(event.pointerId);
    isDrawing.current = true;
    const adds = event.ctrlKey || event.metaKey || event.shiftKey;
    board.select(adds ? toggled(board.selection.value, cell) : only(cell));
    focusCell(event.currentTarget, board.selection.value.cursor);
  };

  const draw = (event: PointerEvent) => {
    const cell = cellUnder(event);
    if (cell === null || !isDrawing.current || (event.buttons & 1) === 0) return;
    board.select(withCell(board.selection.value, cell));
    focusCell(event.currentTarget, cell);
  };

  const lift = () => {
    isDrawing.current = false;
  };

  const labelOf = (index: number, cell: DeskCell, calledBy: string | undefined) => {
    const label = cellLabel(index, cell, board.showsCandidates.value ? cell.candidates : []);
    return calledBy ? `${label}, called by ${calledBy}` : label;
  };

  return (
    <div
      class="board-grid"
      role="grid"
      aria-label="Grid"
      aria-multiselectable
      aria-readonly={!board.mayEnter.value}
      onPointerDown={press}
      onPointerOver={draw}
      onPointerUp={lift}
    >
      {nine.map((row) => (
        // biome-ignore lint/a11y/useFocusableInteractive: the cells take the focus, not their rows
        <div key={row} role="row">
          {nine.map((column) => {
            const index = cellAt(row, column);
            const cell = desk.cells[index];
            return (
              cell && (
                <GridCell
                  key={index}
                  index={index}
                  label={labelOf(index, cell, called.get(index))}
                  isChosen={chosen.has(index)}
                  isCursor={cursor === index}
                  isPointedAt={board.pointedAt.value.has(index)}
                  isWriting={writing.has(index)}
                />
              )
            );
          })}
        </div>
      ))}
    </div>
  );
}

/** Takes the keyboard to a cell of a grid. */
export function focusCell(grid: EventTarget | null, cell: number): void {
  if (grid instanceof Element) grid.querySelector<HTMLElement>(`[data-cell="${cell}"]`)?.focus();
}

function cellUnder(event: Event): number | null {
  const cell = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-cell]') : null;
  return cell ? Number(cell.dataset.cell) : null;
}
