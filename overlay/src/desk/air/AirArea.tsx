import { Area } from '../Area.tsx';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { AirButtons } from './AirButtons.tsx';
import { CalledNow } from './CalledNow.tsx';
import { CoHostPermission } from './CoHostPermission.tsx';
import { Grades } from './Grades.tsx';
import { Lamp } from './Lamp.tsx';
import { OnAirNow } from './OnAirNow.tsx';
import './air.css';

/** What the audience sees, and what it may see next. */
export function AirArea() {
  const model = useDesk();
  const { air } = model;
  const onAir = air.onAir.value;
  const calledOnAir = air.calledOnAir.value;
  const called = air.calledStandby.value ?? (air.upcoming.value ? null : calledOnAir);
  const cue = air.upcoming.value ?? onAir;
  return (
    <Area name="On air" class="air-area" aside={<Lamp isOn={onAir !== null || calledOnAir !== null} />}>
      <OnAirNow onAir={onAir} called={calledOnAir} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: long words are scrolled by the keyboard too */}
      <section class="cue" aria-label="Words of the cue" tabIndex={0}>
        {called ? (
          <CalledNow called={called} isOnAir={called === calledOnAir} />
        ) : cue ? (
          <Grades cue={cue} isOnAir={cue === onAir} />
        ) : (
          <p class="empty">Nothing stands by.</p>
        )}
      </section>
      <AirButtons />
      <div class="row">
        <CoHostPermission />
        <button type="button" class="push" onClick={() => model.open('scenes')}>
          Scenes
        </button>
        <button type="button" aria-keyshortcuts="V" onClick={() => model.open('viewers')}>
          Viewers <KeyHint keys="V" />
        </button>
      </div>
    </Area>
  );
}
