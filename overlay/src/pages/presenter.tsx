import 'virtual:palette/panel.css';
import { render } from 'preact';
import { DeskCalls } from '../connection/deskCalls.ts';
import { deskHubOf } from '../connection/deskHub.ts';
import { connectPage } from '../connection/page.ts';
import { Views } from '../connection/views.ts';
import { DeskPage } from '../desk/DeskPage.tsx';
import { DeskModel } from '../desk/model/model.ts';
import { habitStorage, Settings } from '../desk/model/settings.ts';
import { takeTheme } from '../palette/theme.ts';
import { workerBeat } from '../screen/beat.ts';
import { openCapture, whyNoCapture } from '../screen/capture.ts';
import { ServerPost } from '../screen/post.ts';
import type { CuesView, DeskView, DoorView, NextView, ViewersView } from '../wire.ts';
import type { ForecastView } from '../wireForecast.ts';
import type { LadderView } from '../wireLadder.ts';
import type { RunSheetView, VettedView } from '../wirePlan.ts';
import type { WhyView } from '../wireProofs.ts';
import type { ChaptersView, SavedFile, ShowsView } from '../wireShows.ts';

/** At most some 40 a second, as a screen of 240 would drag a frame faster than the server listens to one page. */
const nextPicture = (run: () => void) => setTimeout(() => requestAnimationFrame(run), 16);

takeTheme(window.location, document.documentElement);
const { hub, line } = connectPage(deskHubOf(window.location.pathname));
const views = new Views(hub);
const calls = new DeskCalls(hub);
const signs = { state: line.state, refusal: line.refusal, waiting: calls.waiting };
const screen = {
  whyNot: whyNoCapture(window),
  open: openCapture,
  post: new ServerPost(),
  beat: workerBeat,
  now: () => performance.now(),
  page: crypto.randomUUID?.() ?? String(Math.random()),
};
const model = new DeskModel(calls, signs, new Settings(habitStorage()), nextPicture, screen);

views.on<DeskView>('Desk', (view) => model.takeDesk(view));
views.on<NextView>('Next', (view) => model.takeNext(view));
views.on<ForecastView>('Forecast', (view) => model.forecast.take(view));
views.on<CuesView>('Cues', (view) => model.takeCues(view));
views.on<ViewersView>('Viewers', (view) => model.takeViewers(view));
views.on<DoorView>('Door', (view) => model.viewers.takeDoor(view));
hub.on('AudienceLink', (link: string) => model.viewers.takeLink(link));
views.on<LadderView>('Ladder', (view) => model.ladder.take(view));
views.on<RunSheetView>('RunSheet', (view) => model.plan.take(view));
hub.on('Vetted', (view: VettedView) => model.vet.take(view));
hub.on('Shows', (view: ShowsView) => model.shows.take(view));
hub.on('Chapters', (view: ChaptersView) => model.shows.takeChapters(view));
hub.on('Save', (file: SavedFile) => void model.shows.takeFile(file));
hub.on('ShowsRefused', (sentence: string) => model.shows.refuse(sentence));
hub.on('Why', (view: WhyView) => model.why.take(view));
void line.keepOpen({
  opening: () => views.startAnew(),
  opened: () => calls.open(),
  closed: () => calls.close(),
});

render(<DeskPage model={model} />, document.body);
