import type { HubConnection } from '@microsoft/signalr';
import { Door } from './door.ts';
import { hubAt } from './hub.ts';
import { tabStorage, takeKey } from './key.ts';
import { Line, realWaiting } from './line.ts';

/** A page's hub, and the line that keeps it connected. */
export interface PageConnection {
  hub: HubConnection;
  line: Line;
}

/**
 * Takes the key out of the address bar and lays the line; nothing is sent before `keepOpen`.
 * @param longestWait Between two tries, in milliseconds; left out for that of most pages.
 */
export function connectPage(address: string, longestWait?: number): PageConnection {
  const held = takeKey(window.location, window.history, tabStorage());
  const hub = hubAt(address);
  return { hub, line: new Line(hub, new Door(held, address), realWaiting, longestWait) };
}
