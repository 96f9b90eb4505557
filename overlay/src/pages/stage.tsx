import { render } from 'preact';
import { connectPage } from '../connection/page.ts';
import { Views } from '../connection/views.ts';
import { takeTheme } from '../palette/theme.ts';
import { ReplayModel, type Wanted, wantedOf } from '../replay/model.ts';
import { ReplayPage } from '../replay/ReplayPage.tsx';
import { StageModel } from '../stage/model.ts';
import { StagePage } from '../stage/StagePage.tsx';
import type { StageView } from '../wire.ts';

takeTheme(window.location, document.documentElement);
const wanted = wantedOf(window.location.search);
if (wanted) replay(wanted);
else live();

/** What is on air. */
function live(): void {
  const { hub, line } = connectPage('/hubs/overlay?page=stage');
  const views = new Views(hub);
  const model = new StageModel();

  views.on<StageView>('Stage', (view) => model.take(view));
  void line.keepOpen({ opening: () => views.startAnew(), closed: () => model.lose() });

  function Stage() {
    return <StagePage model={model} refusal={line.refusal.value} />;
  }

  render(<Stage />, document.body);
}

/** A stored show, by a hub of its own that knows nothing of what is on air. The panel opens it with the presenter's cookie. */
function replay(show: Wanted): void {
  const by = new URLSearchParams(window.location.search).get('by') === 'presenter' ? 'presenter' : 'overlay';
  const { hub, line } = connectPage(`/hubs/${by}/replay`);
  const model = new ReplayModel(hub, show);
  void line.keepOpen({ opening: () => {}, opened: () => void model.open() });

  function Replay() {
    return <ReplayPage model={model} refusal={line.refusal.value} />;
  }

  render(<Replay />, document.body);
}
