import { changeFrom } from '../geometry/changedParts.ts';
import type { Layout } from '../layout/layout.ts';
import type { FieldComputer } from './fieldKeeper.ts';
import type { FieldAnswer, FieldKind, FieldMessage } from './fieldQuestion.ts';
import address from './fieldWorker.ts?worker&url';
import { sayTrouble } from './trouble.ts';
import { trustedScript } from './trustedScript.ts';

const troubles: Readonly<Record<FieldKind, string>> = {
  zone: 'The struck zone can’t be computed',
  ring: 'The ring round the rim can’t be computed',
  floor: 'The stick floor can’t be computed',
};

/** Starts a worker of its own for one kind of field: none waits for another. */
export const startFieldWorker =
  <Kind extends FieldKind>(kind: Kind) =>
  (hear: (answer: FieldAnswer<Kind>) => void): FieldComputer => {
    const worker = new Worker(trustedScript(address), { type: 'module', name: kind });
    worker.addEventListener('message', ({ data }: MessageEvent<FieldAnswer<Kind>>) => {
      if (data.fault !== null) sayTrouble(troubles[kind], new Error(data.fault));
      hear(data);
    });
    worker.addEventListener('error', (event) => {
      sayTrouble(troubles[kind], new Error(event.message));
    });
    let asked: Layout | null = null;
    return {
      ask(question) {
        const message: FieldMessage = { ...question, layout: changeFrom(asked, question.layout) };
        asked = question.layout;
        worker.postMessage(message);
      },
      end: () => worker.terminate(),
    };
  };
