import { boxSpots } from '../cabling/boxSpots.ts';
import type { Box, Stock } from '../layout/cabling.ts';
import type { Deck, Stairs } from '../layout/deck.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Venue } from '../layout/venue.ts';
import { buildRig } from '../rig/buildRig.ts';
import type { Mm } from '../units/quantity.ts';

export type Edge = Stairs['edge'];

/** What the next venue brings. */
export interface NextVenue {
  readonly id: Id;
  readonly name: string;
  readonly venue: Pick<Venue, 'name' | 'date' | 'temperature' | 'humidity'>;
  readonly deck: Pick<Deck, 'width' | 'depth' | 'height' | 'stairs'>;
  /** The edge that the box goes to; null: it stays where it is. */
  readonly boxEdge: Edge | null;
  readonly stock: Stock;
}

/** Spots along the one edge, the first look every so many mm. */
const STEP: Mm = 300;

/**
 * The layout for the next venue:
 * X1 pieces, player, mics, own classes, patch and units are those of `from`, and so a sign-off that held holds;
 * X2 venue, deck, stairs and stock are the new ones; the kit stands on the deck as it did, about its middle;
 * X3 the box goes to the best free spot along the edge that was chosen (least cable), or to the same place where it has none;
 * X4 `origin` names `from` with its venue, deck, box and cabling; what was ticked there is not ticked here: set-up, pull list, line check.
 */
export function nextVenue(from: Layout, to: NextVenue): Layout {
  const { deck, box, cabling, venue } = from;
  const next: Layout = {
    ...from,
    id: to.id,
    name: to.name,
    venue: { ...to.venue, notes: '' },
    deck: { ...to.deck, kit: deck.kit },
    cabling: { ...cabling, stock: to.stock },
    patch: { ...from.patch, ticks: [], lineCheck: [] },
    origin: { layout: from.id, revision: null, name: from.name, venue, deck, box, cabling },
    setUp: { done: [] },
  };
  return to.boxEdge === null ? next : { ...next, box: boxAlong(next, to.boxEdge) };
}

/** X3 */
function boxAlong(layout: Layout, edge: Edge): Box {
  const search = boxSpots(layout, buildRig(layout), { edges: [edge], step: STEP, most: 1 });
  for (;;) {
    const { done, value } = search.next();
    if (done) return (value.byCable[0] ?? value.along[0])?.box ?? layout.box;
  }
}

/** The stairs of a deck with those at one edge taken away or put there; they keep their size where they were there before. */
export function toggledStairs(stairs: readonly Stairs[], edge: Edge, wanted: boolean): Stairs[] {
  const others = stairs.filter((one) => one.edge !== edge);
  if (!wanted) return others;
  const there = stairs.filter((one) => one.edge === edge);
  return [...others, ...(there.length > 0 ? there : [{ edge, offset: 0, width: USUAL_STAIRS }])];
}

/** Common practice, no source. */
const USUAL_STAIRS: Mm = 800;

/**
 * The layout as it would be where it was started from: the same kit on the deck of then, with the box and the cables of then. Null for a
 * layout that was started from nothing stored.
 */
export function asInOrigin(layout: Layout): Layout | null {
  const { origin } = layout;
  if (!origin) return null;
  const { venue, deck, box, cabling } = origin;
  return { ...layout, venue, deck, box, cabling };
}
