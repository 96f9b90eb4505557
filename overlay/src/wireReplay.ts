/** Replays of kept shows, as they cross the wire. */

import type { StageView } from './wire.ts';

/** A moment at which something on the stage changes. */
export interface TimelineMark {
  /** The number of the event, from 1 on. */
  number: number;
  /** Seconds since the show began. */
  at: number;
  /** Seconds into the recording, or null where it was not recorded. */
  recorded: number | null;
}

export interface Timeline {
  title: string;
  events: number;
  moments: TimelineMark[];
}

export interface OpenedReplay {
  refusal: string | null;
  timeline: Timeline | null;
}

/** What a page may ask for at `/hubs/overlay/replay` or `/hubs/presenter/replay`. */
export interface ReplayMethods {
  /** Its number, or `latest`. */
  OpenShow: (show: string) => OpenedReplay;
  /** Null where there is no such event. */
  StageAfter: (number: number) => StageView | null;
}
