import { Caption } from '../picture/Caption.tsx';
import { DelayCode } from '../picture/DelayCode.tsx';
import { Shapes } from '../picture/Shapes.tsx';
import type { Frame } from '../wire.ts';
import { type CaptionPlace, letterHeight, placeCaption } from './captionPlace.ts';
import { FrameOutline } from './FrameOutline.tsx';
import type { OverlayModel } from './model.ts';
import './overlay.css';

interface Props {
  model: OverlayModel;
  /** Width of the page over its height. */
  aspect: number;
}

/** Draws what is on air over whatever lies below, and nothing else, ever. */
export function OverlayPage({ model, aspect }: Props) {
  const { frame, showsFrame, code } = model;
  const picture = model.picture.value;
  if (!frame) return null;
  const words = picture?.caption ?? '';
  return (
    <>
      <svg
        class="board-place"
        viewBox="0 0 9 9"
        preserveAspectRatio="none"
        style={placed(frame)}
        aria-hidden="true"
      >
        {picture && <Shapes shapes={picture.shapes} />}
        {showsFrame && <FrameOutline />}
      </svg>
      {code !== null && <DelayCode code={code} />}
      {words !== '' && <PlacedCaption words={words} place={placeCaption(frame, words.length, aspect)} />}
    </>
  );
}

function PlacedCaption({ words, place }: { words: string; place: CaptionPlace }) {
  const fontSize = `${letterHeight * 100}vh`;
  return (
    <div class={`caption-place ${place.side}`} style={{ ...placed(place), fontSize }}>
      <Caption words={words} />
    </div>
  );
}

function placed({ left, top, width, height }: Frame) {
  const share = (part: number) => `${part * 100}%`;
  return { left: share(left), top: share(top), width: share(width), height: share(height) };
}
