import type { PaintMessage } from '../editor/ink/painting.ts';
import { PaintingHand } from '../editor/ink/paintingHand.ts';

const hand = new PaintingHand((message, transfer) => self.postMessage(message, { transfer }));

/** Paints drawings beside the page. */
self.addEventListener('message', ({ data }: MessageEvent<PaintMessage>) => hand.hear(data));
