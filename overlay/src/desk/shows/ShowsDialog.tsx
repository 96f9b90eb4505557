import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import { ChaptersPart } from './ChaptersPart.tsx';
import { NewShow } from './NewShow.tsx';
import { RecordingKeys } from './RecordingKeys.tsx';
import { ShowList } from './ShowList.tsx';
import './shows.css';

/** The kept shows: begin another, go on with one, replay it, export it, and edit its chapters. */
export function ShowsDialog() {
  const model = useDesk();
  const { shows } = model;
  const [view, chapters] = [shows.view.value, shows.chapters.value];
  return (
    <Modal
      title={chapters ? `Chapters of ${chapters.title || `show ${chapters.show}`}` : 'Shows'}
      class="shows-dialog"
      onClose={() => model.close()}
    >
      {chapters ? (
        <ChaptersPart key={chapters.show} view={chapters} />
      ) : (
        <>
          <RecordingKeys />
          <NewShow />
          {view ? <ShowList shows={view.shows} /> : <p class="empty">Reading the shows.</p>}
        </>
      )}
      <p class="said" role="status">
        {shows.said.value}
      </p>
    </Modal>
  );
}
