import { useLayoutEffect, useRef } from 'preact/hooks';
import { useDesk } from '../context.ts';

interface Props {
  label: string;
  note: string;
  onKeep: (text: string) => void;
  /** @param byKey Whether the focus is to stay here. */
  onClose: (byKey: boolean) => void;
}

/**
 * Where a note is written. Enter keeps it and Escape leaves it as it was; whoever goes elsewhere has written what stands there.
 */
export function NoteField({ label, note, onKeep, onClose }: Props) {
  const { plan } = useDesk();
  const field = useRef<HTMLInputElement>(null);
  const isOver = useRef(false);
  const newest = useRef({ note, onKeep });
  newest.current = { note, onKeep };

  const end = (keeps: boolean) => {
    if (isOver.current) return;
    isOver.current = true;
    const text = field.current?.value ?? newest.current.note;
    if (keeps && text !== newest.current.note) newest.current.onKeep(text);
  };

  // Before the next key comes: on the desk a letter is a command.
  useLayoutEffect(() => {
    plan.beginNote();
    field.current?.focus();
    return () => {
      end(true);
      plan.endNote();
    };
  }, []);

  const close = (keeps: boolean, byKey: boolean) => {
    end(keeps);
    onClose(byKey);
  };
  return (
    <form
      class="row step-note"
      onSubmit={(event) => {
        event.preventDefault();
        close(true, true);
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || event.isComposing) return;
        // The air is cleared by the next one.
        event.stopPropagation();
        event.preventDefault();
        close(false, true);
      }}
      onFocusOut={(event) => {
        const goesTo = event.relatedTarget;
        if (!isOver.current && goesTo instanceof Node && !event.currentTarget.contains(goesTo))
          close(true, false);
      }}
    >
      <input
        ref={field}
        name="note"
        aria-label={label}
        autocomplete="off"
        maxLength={400}
        defaultValue={note}
      />
      <button type="submit">Keep</button>
    </form>
  );
}
