/** What pages and server call on each other. */

import type {
  AudienceDoor,
  CellName,
  CueStage,
  CuesView,
  DeskView,
  DoorView,
  Frame,
  Grade,
  NextView,
  OverlayView,
  Reply,
  StageView,
  ViewersView,
} from './wire.ts';
import type { ForecastView } from './wireForecast.ts';
import type { LadderView } from './wireLadder.ts';
import type { FeaturedRule, RunSheetView, VettedView } from './wirePlan.ts';
import type { WhyView } from './wireProofs.ts';
import type { ChapterMark, ChaptersView, SavedFile, ShowsView } from './wireShows.ts';

/** What the server calls on a page. A whole view each time: a lost one is healed by the next. */
export interface DeskPushes {
  Desk: (view: DeskView) => void;
  Next: (view: NextView) => void;
  Forecast: (view: ForecastView) => void;
  Cues: (view: CuesView) => void;
  Viewers: (view: ViewersView) => void;
  Door: (view: DoorView) => void;
  /** The link of the audience's page, which holds a key: to be copied and never shown. */
  AudienceLink: (link: string) => void;
  Ladder: (view: LadderView) => void;
  RunSheet: (view: RunSheetView) => void;
  Why: (view: WhyView) => void;
  Vetted: (view: VettedView) => void;
  Shows: (view: ShowsView) => void;
  Chapters: (view: ChaptersView) => void;
  /** To be saved or copied. */
  Save: (file: SavedFile) => void;
  /** Why what was asked about shows could not be done, in one plain sentence. */
  ShowsRefused: (sentence: string) => void;
}

export interface OverlayPushes {
  Overlay: (view: OverlayView) => void;
  Stage: (view: StageView) => void;
}

/** What a panel may ask for at `/hubs/presenter` or `/hubs/desk`. Co-hosts are refused the entries; the cue list is theirs. */
export interface DeskMethods {
  LoadPuzzle: (grid: string, title: string, setter: string, link: string) => Reply;
  PlaceDigit: (cell: CellName, digit: number) => Reply;
  EraseCells: (cells: CellName[]) => Reply;
  ToggleBlockMark: (cells: CellName[], digit: number) => Reply;
  ToggleCellMark: (cells: CellName[], digit: number) => Reply;
  ToggleStrike: (cells: CellName[], digit: number) => Reply;
  SettleMarks: () => Reply;
  Undo: () => Reply;
  Redo: () => Reply;
  ClearGrid: () => Reply;
  MarkUsed: (id: string) => Reply;
  StandBy: (id: string) => Reply;
  /** The open cells that viewers call, as they are called now. */
  StandByCalls: () => Reply;
  StandDown: () => Reply;
  NextGrade: () => Reply;
  PreviousGrade: () => Reply;
  ClearAir: () => Reply;
  AllowCoHostOnAir: (allowed: boolean) => Reply;
  PlaceFrame: (scene: string, frame: Frame) => Reply;
  ForgetScene: (scene: string) => Reply;
  ShowFrame: (scene: string | null) => Reply;
  CueDeduction: (id: string, grade: Grade) => Reply;
  CueText: (text: string) => Reply;
  RewordCue: (id: number, version: number, text: string) => Reply;
  RegradeCue: (id: number, version: number, grade: Grade) => Reply;
  /** Behind another one, or to the head of the list. */
  MoveCue: (id: number, after: number | null) => Reply;
  TurnCue: (id: number, version: number, stage: CueStage) => Reply;
  /** On air at its grade, and done. */
  TakeCue: (id: number, version: number) => Reply;
  RemoveCue: (id: number, version: number) => Reply;
  /** Takes off what is done or passed. */
  SweepCues: () => Reply;
  LimitAsks: (open: boolean, highest: Grade, quietOnAir: boolean) => Reply;
  SetDelay: (seconds: number) => Reply;
  UseMeasuredDelay: () => Reply;
  ShowDelayCode: () => Reply;
  HideDelayCode: () => Reply;
  SetAudienceDoor: (door: AudienceDoor) => Reply;
  /** The link is pushed to the page that asks. */
  AudienceLink: () => Reply;
  EndShow: () => Reply;
  BeginShow: (title: string) => Reply;
  /** Goes on with a kept show, as another show. */
  ReopenShow: (show: number) => Reply;
  StartRecording: () => Reply;
  PauseRecording: () => Reply;
  ResumeRecording: () => Reply;
  StopRecording: () => Reply;
  /** This and what follows is pushed when it is there. */
  Shows: () => Reply;
  Chapters: (show: number) => Reply;
  /** Null for those that the log tells. */
  SaveChapters: (show: number, chapters: readonly ChapterMark[] | null) => Reply;
  SetOffset: (show: number, seconds: number) => Reply;
  WriteChapters: (show: number, form: string, rate: string) => Reply;
  ExportShow: (show: number) => Reply;
  StopLadder: (rule: string | null) => Reply;
  SwitchFamily: (family: string, isOn: boolean) => Reply;
  /** The answer is pushed when it is there. */
  Why: (cell: CellName, digit: number) => Reply;
  /** All of them, at most five. */
  FeatureRules: (featured: readonly FeaturedRule[]) => Reply;
  /** Candidates as in `r4c7=5 r1c2=3`; an empty text takes the note away. */
  NoteStep: (places: string, removes: string, text: string) => Reply;
  /** Says too whether these rules are needed. The answer is pushed when it is there. */
  Vet: (grid: string, rules: string[]) => Reply;
  /** This page begins to follow the screen; another one stops. The pictures are posted. */
  FollowScreen: (page: string, withMarks: boolean) => Reply;
  StopFollowing: (page: string) => Reply;
  /** What stands in a cell that was held back: the digit, or 0 for nothing. */
  ReadAs: (cell: CellName, digit: number) => Reply;
  /** It is as it was read. */
  AcceptReading: (cell: CellName) => Reply;
  LoadFromScreen: () => Reply;
  /** Makes the session what is on the screen wherever the two are apart. */
  TakeScreen: () => Reply;
}
