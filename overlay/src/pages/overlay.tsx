import { render } from 'preact';
import { connectPage } from '../connection/page.ts';
import { Views } from '../connection/views.ts';
import { OverlayModel } from '../overlay/model.ts';
import { OverlayPage } from '../overlay/OverlayPage.tsx';
import { pageAspect } from '../overlay/size.ts';
import type { OverlayView } from '../wire.ts';

const scene = new URLSearchParams(window.location.search).get('scene') ?? 'main';
const { hub, line } = connectPage(`/hubs/overlay?page=overlay&scene=${encodeURIComponent(scene)}`);
const views = new Views(hub);
const model = new OverlayModel();
const aspect = pageAspect(window);

views.on<OverlayView>('Overlay', (view) => model.take(view));
// Whatever the state of the line: nobody looks at this page but the audience, so it never says a word about it.
void line.keepOpen({ opening: () => views.startAnew(), closed: () => model.lose() });

function Overlay() {
  return <OverlayPage model={model} aspect={aspect.value} />;
}

render(<Overlay />, document.body);
