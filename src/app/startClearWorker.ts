import type { ClearAnswer } from './clearQuestion.ts';
import type { ClearComputer } from './clearSpotKeeper.ts';
import address from './clearSpotWorker.ts?worker&url';
import { sayTrouble } from './trouble.ts';
import { trustedScript } from './trustedScript.ts';

/** Starts the worker that looks for clear spots. */
export function startClearWorker(hear: (answer: ClearAnswer) => void): ClearComputer {
  const worker = new Worker(trustedScript(address), { type: 'module', name: 'clear spots' });
  worker.addEventListener('message', ({ data }: MessageEvent<ClearAnswer>) => hear(data));
  worker.addEventListener('error', (event) => {
    sayTrouble('Clear spots can’t be looked for', new Error(event.message));
  });
  return { ask: (question) => worker.postMessage(question), end: () => worker.terminate() };
}
