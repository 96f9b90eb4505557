import 'virtual:palette/panel.css';
import { render } from 'preact';
import { AudiencePage } from '../audience/AudiencePage.tsx';
import { AudienceModel } from '../audience/model.ts';
import { viewerId } from '../audience/viewerId.ts';
import { tabStorage } from '../connection/key.ts';
import { connectPage } from '../connection/page.ts';
import { Views } from '../connection/views.ts';
import { takeTheme } from '../palette/theme.ts';
import type { AudienceView } from '../wireAudience.ts';

/** They may be thousands: when they are turned away, they come back more seldom than a page of the desk. In milliseconds. */
const longestWait = 20_000;

takeTheme(window.location, document.documentElement);
const { hub, line } = connectPage(`/hubs/audience?viewer=${viewerId(tabStorage())}`, longestWait);
const views = new Views(hub);
const model = new AudienceModel(hub);

views.on<AudienceView>('Board', (view) => model.take(view));
void line.keepOpen({ opening: () => views.startAnew() });

render(<AudiencePage model={model} line={line} />, document.body);
