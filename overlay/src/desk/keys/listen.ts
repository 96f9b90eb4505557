import type { DeskModel } from '../model/model.ts';
import { actionFor, type KeyAction, type KeyPlace } from './actions.ts';

/** What only the page can do: it knows where the focus is to go. */
export interface FocusTargets {
  focusFilter(): void;
  focusCursor(): void;
  focusCueText(): void;
  focusHeld(): void;
  isOnRunSheet(): boolean;
}

/** Listens to the keys of the whole desk. Returns what stops it. */
export function listenToKeys(page: Document, model: DeskModel, focus: FocusTargets): () => void {
  const heard = (event: KeyboardEvent) => {
    const action = actionFor(event, placeOf(event.target, model));
    if (!action) return;
    event.preventDefault();
    carryOut(action, model, focus);
  };
  page.addEventListener('keydown', heard);
  return () => page.removeEventListener('keydown', heard);
}

function placeOf(target: EventTarget | null, model: DeskModel): KeyPlace {
  const element = target instanceof Element ? target : null;
  return {
    isDialogOpen: model.dialog.value !== null,
    isInText: element?.matches(takesText) ?? false,
    isOnBoard: element?.closest('[role="grid"]') !== null && element !== null,
    isOnControl: element?.matches('button, input, a, summary, [role="option"], [role="listbox"]') ?? false,
    singleKeys: model.settings.singleKeys.value,
  };
}

const takesText =
  'input:not([type="radio"], [type="checkbox"], [type="button"]), textarea, select, [contenteditable="true"]';

function carryOut(action: KeyAction, model: DeskModel, focus: FocusTargets): void {
  const { board, next, air, cues, viewers } = model;
  switch (action.kind) {
    case 'move':
      board.move(action.down, action.right, action.extends);
      focus.focusCursor();
      return;
    case 'digit':
      board.enter(action.digit);
      return;
    case 'way':
      board.choose(action.way);
      return;
    case 'step':
      next.step(action.by);
      return;
    case 'erase':
      board.erase();
      return;
    case 'settle':
      board.settle();
      return;
    case 'undo':
      board.undo();
      return;
    case 'redo':
      board.redo();
      return;
    case 'load':
      if (board.mayEnter.value) model.open('load');
      return;
    case 'filter':
      focus.focusFilter();
      return;
    case 'used':
      next.markUsed();
      return;
    case 'nextGrade':
      if (air.mayAir.value) air.next();
      return;
    case 'back':
      if (air.mayAir.value) air.back();
      return;
    case 'clearAir':
      if (air.mayAir.value) air.clear();
      return;
    case 'cueIt':
      if (next.chosen.value !== null) cues.cue(next.chosen.value);
      return;
    case 'writeCue':
      focus.focusCueText();
      return;
    case 'takeCue':
      if (cues.called.value && air.mayAir.value) cues.takeOnAir(cues.called.value);
      return;
    case 'cueDone':
      if (cues.called.value) void cues.turn(cues.called.value, 'done');
      return;
    case 'allowCoHosts':
      if (air.isPresenter.value) air.allowCoHost(!air.coHostMayAir.value);
      return;
    case 'viewers':
      model.open('viewers');
      return;
    case 'calls':
      viewers.showCalls(!viewers.showsCalls.value);
      return;
    case 'airCalls':
      if (air.mayAir.value) air.standByCalls();
      return;
    case 'ladder':
      model.open('ladder');
      return;
    case 'runSheet':
      if (focus.isOnRunSheet()) model.settings.showRunSheet(false);
      else model.goToRunSheet();
      return;
    case 'watchFeatured':
      model.forecast.watchNext();
      return;
    case 'why':
      model.askWhy();
      return;
    case 'shows':
      model.openShows();
      return;
    case 'recording':
      if (board.mayEnter.value) model.shows.keyRecording();
      return;
    case 'screen':
      if (model.screen.held.value) focus.focusHeld();
      else if (model.screen.mayFollow.value) model.open('screen');
      return;
    case 'loadScreen':
      if (model.screen.hasOtherPuzzle.value) model.screen.load();
      return;
    case 'takeScreen':
      if (model.screen.apart.value.length > 0) model.screen.takeScreen();
      return;
    case 'keys':
      model.open('keys');
  }
}
