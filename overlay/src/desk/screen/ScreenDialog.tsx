import { useDesk } from '../context.ts';
import { Modal } from '../Modal.tsx';
import type { ScreenModel } from '../model/screen.ts';
import { CornerStage } from './CornerStage.tsx';
import { screenWords } from './words.ts';
import './screenDialog.css';

/** Chooses the screen that is followed, and where the grid is on it. */
export function ScreenDialog() {
  const model = useDesk();
  const { screen } = model;
  const phase = screen.phase.value;
  return (
    <Modal title="Follow my screen" class="screen-dialog" onClose={() => model.close()}>
      <div class="screen-parts">
        <Picture screen={screen} />
        <div class="screen-choices">
          <p role="status">{screen.problem.value || stepWords(screen)}</p>
          {screen.whyNot === null ? (
            <Steps screen={screen} onFollow={() => model.close()} />
          ) : (
            <p>{screen.whyNot}</p>
          )}
          <WhatIsFollowed screen={screen} />
          {phase !== 'off' && phase !== 'lost' && (
            <button type="button" onClick={() => screen.stop()}>
              Stop
            </button>
          )}
          <p class="hint">
            Pictures go to the companion alone. It keeps the last one in its memory to see what changes, until
            you stop: nothing of them is stored or written to a log. It stops when you stop it here or in the
            browser, and when this page is closed.
          </p>
        </div>
      </div>
    </Modal>
  );
}

function Picture({ screen }: { screen: ScreenModel }) {
  const corners = screen.corners.value;
  const { capture } = screen;
  if (!capture || !corners) return <p class="empty screen-empty">No screen is shown to this page.</p>;
  return (
    <CornerStage
      stream={capture.stream}
      size={capture.size}
      corners={corners}
      isFixed={screen.phase.value === 'following'}
      onMove={(index, right, down) => screen.moveCorner(index, right, down)}
    />
  );
}

function stepWords(screen: ScreenModel): string {
  const phase = screen.phase.value;
  if (phase === 'placing') {
    const isFound = screen.isFound.value;
    if (isFound === null)
      return 'Looking for the grid: the first picture comes when something changes on the screen.';
    return isFound
      ? 'Grid found. Do its corners fit?'
      : 'No grid was found: put the four corners on the outer corners of its border.';
  }
  const words = screenWords(phase, screen.view.value, screen.isReached.value);
  return words ? `${words}.` : 'Solve in your own program: what you enter there is entered here too.';
}

function Steps({ screen, onFollow }: { screen: ScreenModel; onFollow: () => void }) {
  const phase = screen.phase.value;
  if (phase === 'choosing') return <p>Choose in the window that the browser has opened.</p>;
  if (phase === 'following')
    return (
      <button type="button" onClick={() => screen.placeAgain()}>
        Move the corners
      </button>
    );
  if (phase === 'placing')
    return (
      <div class="row">
        <button
          type="button"
          class="main"
          disabled={screen.corners.value === null}
          onClick={() => {
            void screen.follow();
            onFollow();
          }}
        >
          Follow this grid
        </button>
        <button type="button" disabled={screen.isFound.value === null} onClick={() => void screen.find()}>
          Look again
        </button>
      </div>
    );
  return (
    <button type="button" class="main" onClick={() => void screen.choose()}>
      Choose a screen
    </button>
  );
}

function WhatIsFollowed({ screen }: { screen: ScreenModel }) {
  const choices = [
    { withMarks: true, words: 'Digits and marks' },
    { withMarks: false, words: 'Digits only, for a program whose marks are not to be entered' },
  ];
  return (
    <fieldset class="plain">
      <legend>What is followed</legend>
      {choices.map(({ withMarks, words }) => (
        <label key={words} class="check">
          <input
            type="radio"
            name="what-is-followed"
            checked={screen.withMarks.value === withMarks}
            onChange={() => screen.followMarks(withMarks)}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}
