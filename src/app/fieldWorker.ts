import { createFieldFinder } from '../report/fields.ts';
import type { FieldAnswer, FieldQuestion } from './fieldQuestion.ts';
import { messageOf } from './messageOf.ts';

const finder = createFieldFinder();

/** Computes fields beside the page, one question at a time. */
self.addEventListener('message', ({ data }: MessageEvent<FieldQuestion>) => {
  self.postMessage(answerTo(data));
});

function answerTo({ kind, token, layout, mic, drum }: FieldQuestion): FieldAnswer {
  try {
    if (kind === 'floor') return { token, field: finder.floor(layout), fault: null };
    if (drum !== undefined) return { token, field: finder.plannedRing(layout, drum), fault: null };
    return { token, field: mic === null ? null : finder[kind](layout, mic), fault: null };
  } catch (fault) {
    return { token, field: null, fault: messageOf(fault) };
  }
}
