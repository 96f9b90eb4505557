import type { Box, Size } from './corners.ts';
import { type Crop, canvasOf, DrawnCrop, penOf } from './crop.ts';
import { fingerprintOf, sampleSide } from './fingerprint.ts';

/** What the browser shows of the presenter's screen, until it is stopped. */
export interface Capture {
  /** To look at. */
  readonly stream: MediaStream;
  /** Of the pictures. */
  readonly size: Size;
  /** Whether there is a first picture. */
  readonly isReady: boolean;
  fingerprint(box: Box): Uint8Array;
  /** A part of the picture as it is now, in a size of its own. */
  take(box: Box, size: Size): Crop;
  stop(): void;
}

/** Asks for a screen; `ended` is called when the browser or the presenter stops showing it there. */
export type OpenCapture = (ended: () => void) => Promise<Capture>;

/** Why this page cannot be shown a screen, in one plain sentence; null where it can. */
export function whyNoCapture(page: Pick<Window, 'isSecureContext' | 'navigator'>): string | null {
  if (!page.isSecureContext)
    return 'Browsers show their screen only to pages from this machine or by https: open the panel on the machine that you solve on, or by its https link.';
  if (typeof page.navigator.mediaDevices?.getDisplayMedia !== 'function')
    return 'This browser cannot show its screen to a page: open the panel in a desktop browser that can.';
  return null;
}

/** The browser's own way: the presenter chooses a tab, a window or a screen each time, and nothing is remembered. */
export const openCapture: OpenCapture = async (ended) => {
  // Wishes alone: where one cannot be granted, a bound would be an error. The pointer would lie over digits.
  const wishes = { frameRate: 30, cursor: 'never' } as MediaTrackConstraints;
  const stream = await navigator.mediaDevices.getDisplayMedia({
    video: wishes,
    audio: false,
    ...stayingHere(),
  });
  const video = document.createElement('video');
  video.muted = true;
  video.playsInline = true;
  video.srcObject = stream;
  for (const track of stream.getVideoTracks()) track.addEventListener('ended', ended);
  // Over only with the first picture, which comes when something changes there.
  void video.play().catch(() => {});
  return new VideoCapture(video, stream);
};

/** What of the browser's is not in the types yet. https://www.w3.org/TR/screen-capture/#capturecontroller */
interface FocusingController {
  setFocusBehavior(behavior: 'no-focus-change'): void;
}

declare const CaptureController: (new () => FocusingController) | undefined;

/** A browser that is to show one of its tabs goes to it; the grid is accepted here first. Where a browser cannot stay, it goes. */
function stayingHere(): DisplayMediaStreamOptions {
  if (typeof CaptureController !== 'function') return {};
  const controller = new CaptureController();
  controller.setFocusBehavior('no-focus-change');
  return { controller } as DisplayMediaStreamOptions;
}

/** Pictures out of a video element, which every version of every browser has. It stands in no page, where it would stop when taken out. */
class VideoCapture implements Capture {
  readonly stream: MediaStream;
  readonly #video: HTMLVideoElement;
  readonly #sample = canvasOf({ width: sampleSide, height: sampleSide });

  constructor(video: HTMLVideoElement, stream: MediaStream) {
    this.#video = video;
    this.stream = stream;
  }

  get size(): Size {
    return { width: this.#video.videoWidth, height: this.#video.videoHeight };
  }

  get isReady(): boolean {
    return this.#video.readyState >= HTMLMediaElement.HAVE_CURRENT_DATA && this.#video.videoWidth > 0;
  }

  fingerprint(box: Box): Uint8Array {
    const pen = this.#draw(this.#sample, box);
    return fingerprintOf(pen.getImageData(0, 0, sampleSide, sampleSide).data);
  }

  take(box: Box, size: Size): Crop {
    const canvas = canvasOf(size);
    this.#draw(canvas, box);
    return new DrawnCrop(canvas);
  }

  stop(): void {
    for (const track of this.stream.getTracks()) track.stop();
    this.#video.srcObject = null;
  }

  #draw(canvas: HTMLCanvasElement, { left, top, width, height }: Box): CanvasRenderingContext2D {
    const pen = penOf(canvas);
    pen.drawImage(this.#video, left, top, width, height, 0, 0, canvas.width, canvas.height);
    return pen;
  }
}
