import type { BoxAnswer } from './boxQuestion.ts';
import type { BoxComputer } from './boxSpotKeeper.ts';
import address from './boxSpotWorker.ts?worker&url';
import { sayTrouble } from './trouble.ts';
import { trustedScript } from './trustedScript.ts';

/** Starts the worker that looks for box spots. */
export function startBoxWorker(hear: (answer: BoxAnswer) => void): BoxComputer {
  const worker = new Worker(trustedScript(address), { type: 'module', name: 'box spots' });
  worker.addEventListener('message', ({ data }: MessageEvent<BoxAnswer>) => hear(data));
  worker.addEventListener('error', (event) => {
    sayTrouble('Spots for the box can’t be looked for', new Error(event.message));
  });
  return { ask: (question) => worker.postMessage(question), end: () => worker.terminate() };
}
