import { useEffect, useRef } from 'preact/hooks';
import type { ForecastLine } from '../../wireForecast.ts';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { cellsOf } from '../model/forecast.ts';
import { ComingShape } from './ComingShape.tsx';
import { comingWords, missWords } from './words.ts';
import './forecast.css';

/** When each featured rule comes, a line each; for the desk alone. Nothing where no rule is featured. */
export function Forecast() {
  const { forecast, plan } = useDesk();
  const list = useRef<HTMLUListElement>(null);
  const watched = forecast.watched.value;
  useEffect(() => {
    if (watched !== null)
      list.current?.querySelector('[aria-pressed="true"]')?.scrollIntoView({ block: 'nearest' });
  }, [watched]);
  if (plan.featured.value.length === 0) return null;
  const blocked = forecast.view.value?.blocked ?? null;
  return (
    <section class="forecast" aria-label="Featured rules" aria-keyshortcuts="E">
      <h3>
        Featured <KeyHint keys="E" />
        <span class={forecast.isBehind.value ? 'behind' : 'behind not'}>looking again</span>
      </h3>
      {blocked === null ? (
        <ul ref={list}>
          {forecast.lines.value.map((line) => (
            <Line key={line.rule} line={line} isWatched={line.rule === watched} />
          ))}
        </ul>
      ) : (
        <p class="empty">{blocked}</p>
      )}
    </section>
  );
}

/** While it has the focus or the pointer, or is pressed, its cells show on the board. */
function Line({ line, isWatched }: { line: ForecastLine; isWatched: boolean }) {
  const { board, forecast } = useDesk();
  const cells = cellsOf(line);
  const misses = missWords(line);
  const point = () => board.pointAt(cells);
  const leave = () => board.pointAt([]);
  return (
    <li>
      <button
        type="button"
        aria-pressed={isWatched}
        title={misses === '' ? undefined : misses}
        onClick={() => forecast.watch(isWatched ? null : line.rule)}
        onFocus={point}
        onBlur={leave}
        onPointerEnter={point}
        onPointerLeave={leave}
      >
        <ComingShape coming={line.coming} />
        <span class="words">
          <b>{line.name}</b> {comingWords(line)}
          {misses !== '' && <small> · {misses}</small>}
        </span>
      </button>
    </li>
  );
}
