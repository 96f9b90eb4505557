import { render } from 'preact';
import { connectPage } from '../connection/page.ts';
import { Views } from '../connection/views.ts';
import { takeTheme } from '../palette/theme.ts';
import { StageModel } from '../stage/model.ts';
import { StagePage } from '../stage/StagePage.tsx';
import type { StageView } from '../wire.ts';

takeTheme(window.location, document.documentElement);
const { hub, line } = connectPage('/hubs/overlay?page=stage');
const views = new Views(hub);
const model = new StageModel();

views.on<StageView>('Stage', (view) => model.take(view));
void line.keepOpen({ opening: () => views.startAnew(), closed: () => model.lose() });

function Stage() {
  return <StagePage model={model} refusal={line.refusal.value} />;
}

render(<Stage />, document.body);
