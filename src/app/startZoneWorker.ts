import { sayTrouble } from './trouble.ts';
import { trustedScript } from './trustedScript.ts';
import type { ZoneComputer } from './zoneKeeper.ts';
import type { ZoneAnswer } from './zoneQuestion.ts';
import address from './zoneWorker.ts?worker&url';

/** Starts the worker that computes forbidden zones. */
export function startZoneWorker(hear: (answer: ZoneAnswer) => void): ZoneComputer {
  const worker = new Worker(trustedScript(address), { type: 'module', name: 'zone' });
  worker.addEventListener('message', ({ data }: MessageEvent<ZoneAnswer>) => hear(data));
  worker.addEventListener('error', (event) => {
    sayTrouble('The forbidden zone can’t be computed', new Error(event.message));
  });
  return { ask: (question) => worker.postMessage(question), end: () => worker.terminate() };
}
