import type { Ref } from 'preact';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';

/** Where a talking point is written, or one of the list gets new words. */
export function CueWriter({ text: field }: { text: Ref<HTMLInputElement> }) {
  const { cues } = useDesk();
  const { text, changes } = cues.draft.value;
  const submit = (event: SubmitEvent) => {
    event.preventDefault();
    void cues.submit();
  };
  return (
    <form class="row cue-writer" onSubmit={submit}>
      <label>
        <span class="unseen">Talking point</span>
        <input
          id="cue-text"
          ref={field}
          placeholder="Talking point"
          autocomplete="off"
          maxLength={400}
          aria-keyshortcuts="W"
          value={text}
          onInput={(event) => cues.write(event.currentTarget.value)}
        />
        <KeyHint keys="W" />
      </label>
      <button type="submit" disabled={text.trim() === ''}>
        {changes ? 'Change' : 'Add'}
      </button>
      {changes && (
        <button type="button" onClick={() => cues.dropDraft()}>
          Leave as it is
        </button>
      )}
    </form>
  );
}
