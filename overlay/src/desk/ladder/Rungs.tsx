import type { Rung } from '../../wireLadder.ts';

/** The whole ladder, easiest first; what is not looked for is crossed out. */
export function Rungs({ rungs }: { rungs: readonly Rung[] }) {
  const on = rungs.filter(({ isOn }) => isOn).length;
  return (
    <section>
      <h3>{on === rungs.length ? `All ${on} rules` : `${on} of ${rungs.length} rules`}, easiest first</h3>
      <ol class="rungs">
        {rungs.map(({ rule, name, isOn }) => (
          <li key={rule}>{isOn ? name : <Off name={name} />}</li>
        ))}
      </ol>
    </section>
  );
}

function Off({ name }: { name: string }) {
  return (
    <>
      <s>{name}</s> <span class="unseen">not looked for</span>
    </>
  );
}
