/** Says whether something is on air: by its words and by being filled or not, and only then by its colour. */
export function Lamp({ isOn }: { isOn: boolean }) {
  return (
    <p class={isOn ? 'lamp on' : 'lamp'} role="status">
      <svg viewBox="0 0 12 12" aria-hidden="true" focusable="false">
        <circle cx="6" cy="6" r="4.5" />
      </svg>
      {isOn ? 'ON AIR' : 'Off air'}
    </p>
  );
}
