import { digits } from '../../grid/cells.ts';
import type { DeskCell } from '../../wire.ts';
import { useDesk } from '../context.ts';

/** The nine digits for the mouse, each with how many of it are left to place. */
export function DigitRow({ cells }: { cells: readonly DeskCell[] }) {
  const { board } = useDesk();
  return (
    <div class="digit-row" role="group" aria-label="Digits">
      {digits.map((digit) => {
        const left = 9 - cells.filter((cell) => cell.digit === digit).length;
        return (
          <button
            key={digit}
            type="button"
            disabled={!board.mayEnter.value}
            aria-label={`${digit}, ${left} left`}
            onClick={() => board.enter(digit)}
          >
            <b>{digit}</b> <small>{left === 0 ? 'done' : `${left} left`}</small>
          </button>
        );
      })}
    </div>
  );
}
