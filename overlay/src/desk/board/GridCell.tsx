interface Props {
  index: number;
  label: string;
  isChosen: boolean;
  isCursor: boolean;
  isPointedAt: boolean;
  isWriting: boolean;
}

/** The part of a cell that takes the focus and the pointer; what is written in it is drawn below. */
export function GridCell({ index, label, isChosen, isCursor, isPointedAt, isWriting }: Props) {
  const states = { chosen: isChosen, cursor: isCursor, pointed: isPointedAt, writing: isWriting };
  return (
    <div
      role="gridcell"
      class={Object.entries(states)
        .flatMap(([name, holds]) => (holds ? [name] : []))
        .join(' ')}
      data-cell={index}
      aria-label={label}
      aria-selected={isChosen}
      tabIndex={isCursor ? 0 : -1}
    />
  );
}
