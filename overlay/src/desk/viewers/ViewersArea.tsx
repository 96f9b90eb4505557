import { Area } from '../Area.tsx';
import { useDesk } from '../context.ts';
import { CallList } from './CallList.tsx';
import './viewersArea.css';

/** What viewers say to have found, always in a co-host's sight. The dialog has the limits and the delay besides. */
export function ViewersArea() {
  const view = useDesk().viewers.view.value;
  const answers = view?.answers ?? 0;
  return (
    <Area
      name="Viewers"
      class="viewers-area"
      aside={<p class="count">{answers === 1 ? '1 answer' : `${answers} answers`}</p>}
    >
      <CallList calls={view?.calls ?? []} />
    </Area>
  );
}
