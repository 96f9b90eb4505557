import { useState } from 'preact/hooks';
import { timeOf, timeText } from '../../grid/time.ts';
import type { ChapterMark } from '../../wireShows.ts';

interface Props {
  mark: ChapterMark;
  isFirst: boolean;
  isLone: boolean;
  onTitle: (title: string) => void;
  onMove: (at: number) => void;
  onMerge: () => void;
  onSplit: () => void;
}

/** One chapter: its time and its title, and what becomes of it. */
export function ChapterRow({ mark, isFirst, isLone, onTitle, onMove, onMerge, onSplit }: Props) {
  const [typed, type] = useState<string | null>(null);
  const isBad = typed !== null && timeOf(typed) === null;
  const move = () => {
    const at = typed === null ? null : timeOf(typed);
    if (at !== null && at !== mark.at) onMove(at);
    type(null);
  };
  return (
    <li class="row">
      <input
        class="time"
        aria-label="Begins at"
        aria-invalid={isBad}
        readOnly={isFirst}
        value={typed ?? timeText(mark.at)}
        onInput={(event) => type(event.currentTarget.value)}
        onBlur={move}
      />
      <input
        class="title"
        aria-label="Title"
        maxLength={100}
        value={mark.title}
        onInput={(event) => onTitle(event.currentTarget.value)}
      />
      <button type="button" disabled={isLone} onClick={onMerge}>
        {isFirst ? 'Merge with the next one' : 'Merge with the one before'}
      </button>
      <button type="button" onClick={onSplit}>
        Split
      </button>
    </li>
  );
}
