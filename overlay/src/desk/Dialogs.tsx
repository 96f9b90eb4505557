import { ClearDialog } from './board/ClearDialog.tsx';
import { LoadDialog } from './board/LoadDialog.tsx';
import { useDesk } from './context.ts';
import { KeysDialog } from './keys/KeysDialog.tsx';
import { LadderDialog } from './ladder/LadderDialog.tsx';
import { ScenesDialog } from './scenes/ScenesDialog.tsx';
import { ScreenDialog } from './screen/ScreenDialog.tsx';
import { ShowsDialog } from './shows/ShowsDialog.tsx';
import { ViewersDialog } from './viewers/ViewersDialog.tsx';
import { WhyDialog } from './why/WhyDialog.tsx';
import './dialogs.css';

/** The dialog that is open, if one is. */
export function Dialogs() {
  switch (useDesk().dialog.value) {
    case 'load':
      return <LoadDialog />;
    case 'clear':
      return <ClearDialog />;
    case 'keys':
      return <KeysDialog />;
    case 'scenes':
      return <ScenesDialog />;
    case 'viewers':
      return <ViewersDialog />;
    case 'ladder':
      return <LadderDialog />;
    case 'shows':
      return <ShowsDialog />;
    case 'screen':
      return <ScreenDialog />;
    case 'why':
      return <WhyDialog />;
    case null:
      return null;
  }
}
