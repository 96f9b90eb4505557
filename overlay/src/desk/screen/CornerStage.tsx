import { useEffect, useRef } from 'preact/hooks';
import { type Corners, cornerNames, type Size } from '../../screen/corners.ts';

interface Props {
  /** The moving picture of the screen. */
  stream: MediaStream;
  size: Size;
  corners: Corners;
  /** Whether the corners may be moved. */
  isFixed: boolean;
  onMove: (index: number, right: number, down: number) => void;
}

const arrows: Record<string, readonly [right: number, down: number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The presenter's screen with the corners of the grid, which are dragged, or moved by arrow keys. */
export function CornerStage({ stream, size, corners, isFixed, onMove }: Props) {
  const stage = useRef<HTMLDivElement>(null);
  const hold = useRef<{ index: number; x: number; y: number } | null>(null);
  const video = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    if (video.current) video.current.srcObject = stream;
  }, [stream]);

  const take = (index: number) => (event: PointerEvent) => {
    if (event.button !== 0 || isFixed) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    hold.current = { index, x: event.clientX, y: event.clientY };
  };
  const pull = (event: PointerEvent) => {
    const shown = stage.current?.getBoundingClientRect();
    if (!hold.current || !shown) return;
    const { index, x, y } = hold.current;
    hold.current = { index, x: event.clientX, y: event.clientY };
    onMove(
      index,
      ((event.clientX - x) * size.width) / shown.width,
      ((event.clientY - y) * size.height) / shown.height,
    );
  };
  const letGo = () => {
    hold.current = null;
  };
  const nudge = (index: number) => (event: KeyboardEvent) => {
    const step = arrows[event.key];
    if (!step || isFixed) return;
    event.preventDefault();
    const far = event.shiftKey ? 10 : 1;
    onMove(index, step[0] * far, step[1] * far);
  };

  const outline = corners.map(({ x, y }) => `${x},${y}`).join(' ');
  return (
    <div
      ref={stage}
      class="corner-stage"
      style={{ aspectRatio: `${size.width} / ${size.height}`, '--ratio': size.width / size.height }}
      onPointerMove={pull}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    >
      <video ref={video} autoPlay muted playsInline aria-label="Your screen" />
      <svg viewBox={`0 0 ${size.width} ${size.height}`} aria-hidden="true" focusable="false">
        <polygon class="under" points={outline} />
        <polygon points={outline} />
      </svg>
      {corners.map((corner, index) => (
        <button
          key={cornerNames[index]}
          type="button"
          class="corner"
          disabled={isFixed}
          aria-label={`${cornerNames[index]} corner of the grid: arrow keys move it, with Shift by 10 pixels`}
          style={{ left: `${(corner.x / size.width) * 100}%`, top: `${(corner.y / size.height) * 100}%` }}
          onPointerDown={take(index)}
          onKeyDown={nudge(index)}
        />
      ))}
    </div>
  );
}
