import { changed } from '../geometry/changedParts.ts';
import type { Layout } from '../layout/layout.ts';
import { createFieldFinder } from '../report/fields.ts';
import type { FieldAnswer, FieldMessage } from './fieldQuestion.ts';
import { messageOf } from './messageOf.ts';

const finder = createFieldFinder();
let layout: Layout | null = null;

/** Computes fields beside the page, one question at a time. */
self.addEventListener('message', ({ data }: MessageEvent<FieldMessage>) => {
  const answer = answerTo(data);
  // The heights of a field are made anew for every answer: the page gets them without a copy.
  const given =
    answer.field !== null && 'field' in answer.field ? [answer.field.field.heights.buffer] : [];
  self.postMessage(answer, { transfer: given });
});

function answerTo({ kind, token, mic, drum, ...asked }: FieldMessage): FieldAnswer {
  try {
    layout = changed(layout, asked.layout) as Layout;
    if (kind === 'floor') return { token, field: finder.floor(layout), fault: null };
    if (drum !== undefined) return { token, field: finder.plannedRing(layout, drum), fault: null };
    return { token, field: mic === null ? null : finder[kind](layout, mic), fault: null };
  } catch (fault) {
    return { token, field: null, fault: messageOf(fault) };
  }
}
