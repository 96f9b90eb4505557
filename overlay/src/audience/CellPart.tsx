import { digits, nameOf } from '../grid/cells.ts';
import type { StageCell } from '../wire.ts';
import type { AudienceModel } from './model.ts';

/** What can be asked or told about the chosen cell. */
export function CellPart({ model, cells }: { model: AudienceModel; cells: readonly StageCell[] }) {
  const chosen = model.chosen.value;
  const cell = chosen === null ? undefined : cells[chosen];
  if (chosen === null || !cell)
    return <p class="quiet">Choose a cell to ask about it, or to say that you have found it.</p>;
  const name = nameOf(chosen);
  return (
    <section aria-labelledby="cell">
      <h2 id="cell">{name}</h2>
      {cell.digit === null ? <Found model={model} name={name} /> : <Filled model={model} cell={cell} />}
      <button type="button" onClick={() => model.choose(null)}>
        Back to the whole board
      </button>
    </section>
  );
}

function Filled({ model, cell }: { model: AudienceModel; cell: StageCell }) {
  if (cell.isGiven) return <p>The {cell.digit} is a given.</p>;
  return (
    <button type="button" aria-disabled={model.isAsking.value} onClick={() => model.why()}>
      Why is the {cell.digit} here?
    </button>
  );
}

function Found({ model, name }: { model: AudienceModel; name: string }) {
  return (
    <fieldset>
      <legend>I have found it</legend>
      <div class="digits">
        {digits.map((digit) => (
          <button
            key={digit}
            type="button"
            aria-label={`I have found ${name}: it is ${digit}`}
            aria-disabled={model.isAsking.value}
            onClick={() => model.call(digit)}
          >
            {digit}
          </button>
        ))}
      </div>
      <button type="button" aria-disabled={model.isAsking.value} onClick={() => model.call(null)}>
        I do not say which
      </button>
    </fieldset>
  );
}
