import { type Motion, motionOf } from '../clearance/micClearance.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { type FloorReport, floorOf } from './floor.ts';
import { plannedRing } from './plannedRing.ts';
import { type RingOfMic, ringOf } from './ring.ts';
import { type ForbiddenZone, forbiddenZone } from './zone.ts';

/** Computes the fields of layouts that come by message. */
export interface FieldFinder {
  zone(layout: Layout, mic: Id): ForbiddenZone | null;
  ring(layout: Layout, mic: Id): RingOfMic | null;
  plannedRing(layout: Layout, drum: Id): RingOfMic | null;
  floor(layout: Layout): FloorReport;
}

/** A finder with a memory of its own: the index of the moves is kept while kit and player stay equal. */
export function createFieldFinder(): FieldFinder {
  // What comes by message is never the same object twice, so that equal parts are known by their text.
  let last: { readonly text: string; readonly motion: Motion } | undefined;
  const motionFor = ({ player, pieces }: Layout): Motion => {
    const text = JSON.stringify([player, pieces]);
    if (last?.text !== text) last = { text, motion: motionOf(player, pieces) };
    return last.motion;
  };
  return {
    zone: (layout, mic) => forbiddenZone(layout, mic, motionFor(layout)),
    ring: (layout, mic) => ringOf(layout, mic, motionFor(layout)),
    plannedRing: (layout, drum) => plannedRing(layout, drum, motionFor(layout)),
    floor: (layout) => floorOf(layout, motionFor(layout)),
  };
}
