import { forbiddenZone } from '../report/zone.ts';
import type { ZoneAnswer, ZoneQuestion } from './zoneQuestion.ts';

/** Computes forbidden zones beside the page, one question at a time. */
self.addEventListener('message', ({ data }: MessageEvent<ZoneQuestion>) => {
  const answer: ZoneAnswer = { token: data.token, zone: forbiddenZone(data.layout, data.mic) };
  self.postMessage(answer);
});
