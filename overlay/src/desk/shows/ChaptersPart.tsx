import { useEffect, useState } from 'preact/hooks';
import type { ChapterMark, ChaptersView } from '../../wireShows.ts';
import { useDesk } from '../context.ts';
import { ChapterForms } from './ChapterForms.tsx';
import { ChapterRow } from './ChapterRow.tsx';
import { merged, moved, retitled, split } from './edits.ts';
import { OffsetPart } from './OffsetPart.tsx';

/** The chapters of a show: edited here, and kept when they are saved. */
export function ChaptersPart({ view }: { view: ChaptersView }) {
  const { shows } = useDesk();
  const [marks, edit] = useState<readonly ChapterMark[]>(view.chapters);
  const [isChanged, change] = useState(false);
  useEffect(() => {
    edit(view.chapters);
    change(false);
  }, [view]);
  const set = (next: readonly ChapterMark[]) => {
    edit(next);
    change(true);
  };
  return (
    <>
      <div class="row">
        <button type="button" onClick={() => shows.closeChapters()}>
          All shows
        </button>
        <span class="hint">
          {view.isRecorded ? '' : 'No recording was keyed: times are counted from the first event. '}
          {view.isEdited ? 'Edited by you.' : 'As the log tells them.'}
        </span>
      </div>
      <ol class="chapters">
        {marks.map((mark, index) => (
          <ChapterRow
            key={index}
            mark={mark}
            isFirst={index === 0}
            isLone={marks.length === 1}
            onTitle={(title) => set(retitled(marks, index, title))}
            onMove={(at) => set(moved(marks, index, at, view.length))}
            onMerge={() => set(merged(marks, index))}
            onSplit={() => set(split(marks, index, view.length))}
          />
        ))}
      </ol>
      {view.broken.length > 0 && !isChanged && (
        <ul class="broken">
          {view.broken.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <div class="row">
        <button
          type="button"
          class="main"
          disabled={!isChanged}
          onClick={() => shows.saveChapters(view.show, marks)}
        >
          Save chapters
        </button>
        <button
          type="button"
          disabled={!view.isEdited && !isChanged}
          onClick={() => shows.saveChapters(view.show, null)}
        >
          Back to those of the log
        </button>
      </div>
      <OffsetPart key={view.offset} view={view} />
      <ChapterForms show={view.show} isChanged={isChanged} />
    </>
  );
}
