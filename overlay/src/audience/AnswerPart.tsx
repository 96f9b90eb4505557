import type { AudienceModel } from './model.ts';

/** The last answer. It is read out when it comes, and stays until it is taken off or another comes. */
export function AnswerPart({ model }: { model: AudienceModel }) {
  const told = model.told.value;
  return (
    <section class="answer" aria-label="Answer">
      <div role="status" aria-live="polite" aria-atomic="true">
        {told?.words.map((words) => (
          <p key={words}>{words}</p>
        ))}
        {model.hasMovedOn && <p class="quiet">The presenter has gone on since.</p>}
      </div>
      {told && (
        <button type="button" onClick={() => model.clear()}>
          {told.shapes.length > 0 ? 'Take it off the board' : 'Close'}
        </button>
      )}
    </section>
  );
}
