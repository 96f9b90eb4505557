import { Area } from '../Area.tsx';
import { useDesk } from '../context.ts';
import { Forecast } from '../forecast/Forecast.tsx';
import { LadderButton } from '../ladder/LadderButton.tsx';
import { Chosen } from './Chosen.tsx';
import { DeductionList } from './DeductionList.tsx';
import { Filter } from './Filter.tsx';
import './next.css';

/** Every open deduction. Choosing one has it stand by: previewed on the board, nothing visible outside. */
export function NextArea() {
  const { next } = useDesk();
  const view = next.view.value;
  const blocked = view?.blocked ?? null;
  return (
    <Area name="Next" class="next-area" aside={<Aside isBlocked={blocked !== null} />}>
      {blocked !== null ? (
        <p class="blocked">{blocked}</p>
      ) : (
        <>
          <Forecast />
          <Filter />
          <Cut />
          <DeductionList />
          <Chosen />
        </>
      )}
    </Area>
  );
}

function Aside({ isBlocked }: { isBlocked: boolean }) {
  return (
    <>
      {!isBlocked && <Count />}
      <LadderButton />
    </>
  );
}

/** Says that not the whole ladder is looked for. */
function Cut() {
  const cut = useDesk().ladder.cut.value;
  return cut === '' ? null : <p class="cut">Ladder: {cut}.</p>;
}

function Count() {
  const { next } = useDesk();
  const all = next.view.value?.deductions.length ?? 0;
  const found = next.found.value.length;
  return (
    <p class="count">
      <span class={next.isBehind.value ? 'behind' : 'behind not'}>looking again</span>{' '}
      <span class="open">{found === all ? `${all} open` : `${found} of ${all} open`}</span>
    </p>
  );
}
