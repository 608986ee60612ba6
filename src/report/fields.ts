import { createMotion } from '../clearance/clearances.ts';
import type { Motion } from '../clearance/micClearance.ts';
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
  // What comes by message is never the same object twice, so that equal parts are known by their text. What is equal stays the same object: while
  // a drum is dragged, only what has to do with that drum is swept again.
  const motionOf = createMotion();
  let text = '';
  let player: Player | undefined;
  let pieces: ReadonlyMap<string, Piece> = new Map();
  let same: Pick<Layout, 'player' | 'pieces'> | undefined;
  const motionFor = (layout: Layout): Motion => {
    const now = JSON.stringify([layout.player, layout.pieces]);
    if (!same || now !== text) {
      if (JSON.stringify(player) !== JSON.stringify(layout.player)) player = layout.player;
      const kept = new Map(layout.pieces.map((piece) => [JSON.stringify(piece), piece]));
      for (const key of kept.keys()) kept.set(key, pieces.get(key) ?? (kept.get(key) as Piece));
      [text, pieces] = [now, kept];
      same = { player: player ?? layout.player, pieces: [...kept.values()] };
    }
    return motionOf(same);
  };
  return {
    zone: (layout, mic) => forbiddenZone(layout, mic, motionFor(layout)),
    ring: (layout, mic) => ringOf(layout, mic, motionFor(layout)),
    plannedRing: (layout, drum) => plannedRing(layout, drum, motionFor(layout)),
    floor: (layout) => floorOf(layout, motionFor(layout)),
  };
}
