import { useEffect, useRef } from 'preact/hooks';
import type { HeldReading } from '../../wireScreen.ts';
import { useDesk } from '../context.ts';
import { KeyHint } from '../KeyHint.tsx';
import { answerOf } from './answerKeys.ts';
import { cellWords } from './words.ts';
import './screenCall.css';

/** What following the screen asks the presenter: what a cell holds, whether to load a puzzle, which of two grids is right. */
export function ScreenCall() {
  const { screen } = useDesk();
  const view = screen.view.value;
  const held = screen.held.value;
  return (
    <div class="screen-call-place" role="status">
      {screen.hasOtherPuzzle.value && <OtherPuzzle givens={view?.otherGivens ?? 0} />}
      {held && <Held key={held.cell} held={held} more={(view?.held.length ?? 1) - 1} />}
      {screen.apart.value.length > 0 && <Apart cells={screen.apart.value} />}
      {view && screen.wasSlow.value && (
        <p class="screen-call">
          The browser held this panel back, so entries came late: give it a window of its own, not hidden by
          others.
        </p>
      )}
      {view?.refusal && <p class="screen-call">Not entered from the screen: {view.refusal}</p>}
    </div>
  );
}

function Held({ held, more }: { held: HeldReading; more: number }) {
  const { screen } = useDesk();
  const section = useRef<HTMLElement>(null);
  const picture = useRef<HTMLCanvasElement>(null);
  // Whoever is doing something else on the desk goes on with it: M comes here.
  useEffect(() => {
    if (document.activeElement === document.body) section.current?.focus();
  }, []);
  useEffect(() => {
    if (picture.current) screen.drawCell(picture.current, held.cell);
  });

  const press = (event: KeyboardEvent) => {
    // Enter on a button is the button's.
    if (event.key === 'Enter' && event.target !== event.currentTarget) return;
    const answer = answerOf(event);
    if (answer === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    screen.answer(answer);
  };

  return (
    <section
      ref={section}
      class="screen-call held"
      aria-label="Reading unsure"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: one key answers here
      tabIndex={0}
      onKeyDown={press}
    >
      <canvas ref={picture} width={64} height={64} role="img" aria-label={`${held.cell} on the screen`} />
      <div>
        <p>
          {held.text} {more > 0 && <small>{more === 1 ? '1 more waits' : `${more} more wait`}</small>}
        </p>
        <div class="row">
          <span>
            <kbd>1</kbd> to <kbd>9</kbd> its digit
          </span>
          <button type="button" aria-keyshortcuts="Backspace" onClick={() => screen.answer(0)}>
            Empty <KeyHint keys="Backspace" />
          </button>
          <button type="button" class="main" aria-keyshortcuts="Enter" onClick={() => screen.answer(null)}>
            As read <KeyHint keys="Enter" />
          </button>
        </div>
      </div>
    </section>
  );
}

function OtherPuzzle({ givens }: { givens: number }) {
  const { screen } = useDesk();
  return (
    <section class="screen-call" aria-label="Another puzzle on the screen">
      <p>Another puzzle with {givens} givens is on the screen. Nothing is entered before it is loaded.</p>
      <button type="button" class="main" aria-keyshortcuts="J" onClick={() => screen.load()}>
        Load it <KeyHint keys="J" />
      </button>
    </section>
  );
}

function Apart({ cells }: { cells: readonly string[] }) {
  const { screen, board } = useDesk();
  const point = (at: readonly string[]) => () => board.pointAt(at);
  return (
    <section class="screen-call" aria-label="Screen and board differ">
      <p>The screen differs from this board in {cellWords(cells)}.</p>
      <button
        type="button"
        aria-keyshortcuts="I"
        onMouseEnter={point(cells)}
        onMouseLeave={point([])}
        onFocus={point(cells)}
        onBlur={point([])}
        onClick={() => screen.takeScreen()}
      >
        Take what is on the screen <KeyHint keys="I" />
      </button>
    </section>
  );
}
