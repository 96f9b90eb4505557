import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';

interface Props {
  title: string;
  class: string;
  onClose: () => void;
  children: ComponentChildren;
}

/** A dialog over the desk. It is open for as long as it is rendered; Escape closes it. What has `data-first` has the focus at first. */
export function Modal({ title, class: kind, onClose, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    const opener = document.activeElement;
    dialog.current?.showModal();
    dialog.current?.querySelector<HTMLElement>('[data-first]')?.focus();
    return () => {
      if (opener instanceof HTMLElement) opener.focus();
    };
  }, []);
  // The browser tells of the close only after a while, when another dialog may be open already.
  const closed = () => dialog.current && onClose();
  return (
    <dialog
      ref={dialog}
      class={`modal ${kind}`}
      aria-labelledby={heading}
      onCancel={onClose}
      onClose={closed}
    >
      <header>
        <h2 id={heading}>{title}</h2>
        <button type="button" onClick={onClose}>
          Close
        </button>
      </header>
      {children}
    </dialog>
  );
}
