import { useRef } from 'preact/hooks';
import type { Frame } from '../../wire.ts';
import { corners, type dragged, type Grip, keyStep } from './frame.ts';

interface Props {
  frame: Frame;
  drag: typeof dragged;
  onChange: (frame: Frame) => void;
}

interface Hold {
  grip: Grip;
  from: Frame;
  x: number;
  y: number;
}

const arrows: Record<string, readonly [right: number, down: number]> = {
  ArrowLeft: [-keyStep, 0],
  ArrowRight: [keyStep, 0],
  ArrowUp: [0, -keyStep],
  ArrowDown: [0, keyStep],
};

/** A small 16:9 picture with the safe area, in which the frame is dragged by its body or a corner, or moved by arrow keys. */
export function FrameStage({ frame, drag, onChange }: Props) {
  const picture = useRef<HTMLDivElement>(null);
  const hold = useRef<Hold | null>(null);

  const take = (grip: Grip) => (event: PointerEvent) => {
    if (event.button !== 0) return;
    event.stopPropagation();
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    hold.current = { grip, from: frame, x: event.clientX, y: event.clientY };
  };
  const pull = (event: PointerEvent) => {
    const size = picture.current?.getBoundingClientRect();
    if (!hold.current || !size) return;
    const { grip, from, x, y } = hold.current;
    onChange(drag(from, grip, (event.clientX - x) / size.width, (event.clientY - y) / size.height));
  };
  const letGo = () => {
    hold.current = null;
  };
  const nudge = (event: KeyboardEvent) => {
    const step = arrows[event.key];
    if (!step) return;
    event.preventDefault();
    onChange(drag(frame, event.shiftKey ? 'bottomRight' : 'body', ...step));
  };

  return (
    <div ref={picture} class="frame-stage" onPointerMove={pull} onPointerUp={letGo} onPointerCancel={letGo}>
      <div class="safe-area" />
      <div
        class="frame"
        role="application"
        aria-label="Frame of the board: arrow keys move it, Shift with arrow keys resizes it"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow keys move the frame
        tabIndex={0}
        style={styleOf(frame)}
        onKeyDown={nudge}
        onPointerDown={take('body')}
      >
        {corners.map((corner) => (
          <span key={corner} class={`grip ${corner}`} onPointerDown={take(corner)} />
        ))}
      </div>
    </div>
  );
}

function styleOf(frame: Frame) {
  const percent = (share: number) => `${share * 100}%`;
  return {
    left: percent(frame.left),
    top: percent(frame.top),
    width: percent(frame.width),
    height: percent(frame.height),
  };
}
