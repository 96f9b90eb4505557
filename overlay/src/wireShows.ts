/** Kept shows, their recordings and chapters, as they cross the wire. */

export type RecordingPhase = 'none' | 'running' | 'paused' | 'stopped';

export interface Recording {
  phase: RecordingPhase;
  /** Recorded before it last went on. */
  seconds: number;
  /** When it last went on, ISO 8601; null where it does not run. */
  since: string | null;
}

export interface ShowLine {
  id: number;
  title: string;
  puzzles: string[];
  /** ISO 8601 */
  began: string;
  seconds: number;
  events: number;
  entries: number;
  hash: string;
  isLive: boolean;
  isImported: boolean;
}

export interface ShowsView {
  shows: ShowLine[];
}

/** Seconds of the video. */
export interface ChapterMark {
  at: number;
  title: string;
}

export interface ChaptersView {
  show: number;
  title: string;
  chapters: ChapterMark[];
  length: number;
  offset: number;
  /** Else times are counted from the show's first event. */
  isRecorded: boolean;
  isEdited: boolean;
  /** What video sites would ignore the list for, in plain sentences. */
  broken: string[];
}

export interface SavedFile {
  name: string;
  text: string;
}
