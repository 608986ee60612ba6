import { createMotion } from '../clearance/clearances.ts';
import type { Motion } from '../clearance/micClearance.ts';
import { sameList } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
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
  // What comes by message is never the same object twice. What is equal stays the same object: while a drum is dragged, only what has to do with
  // that drum is swept again.
  const motionOf = createMotion();
  const samePlayer = keptEqual<Player>();
  const samePieces = keptEqual<Piece>();
  const motionFor = (layout: Layout): Motion => {
    const [player = layout.player] = samePlayer([layout.player]);
    return motionOf({ player, pieces: samePieces(layout.pieces) });
  };
  return {
    zone: (layout, mic) => forbiddenZone(layout, mic, motionFor(layout)),
    ring: (layout, mic) => ringOf(layout, mic, motionFor(layout)),
    plannedRing: (layout, drum) => plannedRing(layout, drum, motionFor(layout)),
    floor: (layout) => floorOf(layout, motionFor(layout)),
  };
}

/** Lists in which what equals an entry of the last list, by its text, is that very object; a list of nothing else is that very list. */
function keptEqual<Thing>(): (things: readonly Thing[]) => readonly Thing[] {
  let known: ReadonlyMap<string, Thing> = new Map();
  const same = sameList<Thing>();
  return (things) => {
    const now = things.map((thing) => {
      const text = JSON.stringify(thing);
      return [text, known.get(text) ?? thing] as const;
    });
    known = new Map(now);
    return same(now.map(([, thing]) => thing));
  };
}
