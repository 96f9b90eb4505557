import type { LineState } from '../connection/line.ts';

/** The state of the connection in words. */
export function connectionWords(state: LineState, waiting: number): string {
  switch (state) {
    case 'connected':
      return 'Connected';
    case 'connecting':
      return 'Connecting';
    case 'refused':
      return 'Not let in';
    case 'reconnecting':
      return waiting === 0
        ? 'Reconnecting: your entries wait'
        : `Reconnecting: ${waiting} ${waiting === 1 ? 'entry waits' : 'entries wait'}`;
  }
}
