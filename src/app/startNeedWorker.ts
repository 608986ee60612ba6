import type { NeedComputer } from './needKeeper.ts';
import type { NeedAnswer } from './needQuestion.ts';
import address from './needWorker.ts?worker&url';
import { trustedScript } from './trustedScript.ts';

/** Starts the worker that looks through the layouts of the list. One that fails answers nothing: the rows stay as they are. */
export function startNeedWorker(hear: (answer: NeedAnswer | null) => void): NeedComputer {
  const worker = new Worker(trustedScript(address), { type: 'module', name: 'needs' });
  worker.addEventListener('message', ({ data }: MessageEvent<NeedAnswer | null>) => hear(data));
  worker.addEventListener('error', () => hear(null));
  return { ask: (layout) => worker.postMessage(layout), end: () => worker.terminate() };
}
