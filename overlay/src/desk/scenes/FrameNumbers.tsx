import type { Frame } from '../../wire.ts';
import { withNumber } from './frame.ts';

const fields: readonly { name: keyof Frame; label: string }[] = [
  { name: 'left', label: 'Left' },
  { name: 'top', label: 'Top' },
  { name: 'width', label: 'Width' },
  { name: 'height', label: 'Height' },
];

/** The frame in percent of the picture, for who knows the numbers. */
export function FrameNumbers({ frame, onChange }: { frame: Frame; onChange: (frame: Frame) => void }) {
  return (
    <>
      {fields.map(({ name, label }) => (
        <label key={name} class="percent">
          {label} %
          <input
            type="number"
            min={0}
            max={100}
            step={0.1}
            value={(frame[name] * 100).toFixed(1)}
            onChange={(event) => {
              const percent = event.currentTarget.valueAsNumber;
              if (Number.isFinite(percent)) onChange(withNumber(frame, name, percent / 100));
            }}
          />
        </label>
      ))}
    </>
  );
}
