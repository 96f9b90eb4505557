import type { Family } from '../../wireLadder.ts';
import { useDesk } from '../context.ts';

/** A switch for each family of rules. */
export function Families({ families }: { families: readonly Family[] }) {
  const { ladder } = useDesk();
  return (
    <section>
      <h3>Families</h3>
      <ul class="families">
        {families.map(({ name, isOn, assumesOneSolution }) => (
          <li key={name}>
            <label class="check">
              <input
                type="checkbox"
                checked={isOn}
                onChange={(event) => ladder.switchFamily(name, event.currentTarget.checked)}
              />
              {name}
            </label>
            {assumesOneSolution && (
              <small>These rest on the puzzle having a single solution, and the list says so.</small>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
