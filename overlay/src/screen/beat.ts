/** Calls something some thirty times a second until what it returns is called. */
export type Beat = (call: () => void) => () => void;

export const workerBeat: Beat = (call) => {
  const worker = new Worker(new URL('./ticker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = call;
  return () => worker.terminate();
};
