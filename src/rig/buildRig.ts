import { listed } from '../geometry/listed.ts';
import { isSameList, remembered, sameList } from '../geometry/remembered.ts';
import { findMicClass } from '../layout/catalogue/micClasses.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import { carriers } from './mics/wayDown.ts';
import type { PlacedMic, PlacedPiece, Rig } from './placed.ts';
import { placeMic } from './placeMic.ts';
import { placePiece } from './placePiece.ts';

/** What of a layout the rig depends on. */
export type RigLayout = Pick<Layout, 'pieces' | 'mics' | 'ownClasses' | 'player'>;

/** Everything of a layout in space. Its references must have been checked: see {@link placeMic}. */
export const buildRig = (layout: RigLayout): Rig => createRigBuilder()(layout);

/**
 * A builder that remembers its last rig: a piece or mic whose own data, and the data that its place depends on, are the
 * same objects as before comes back as the same placed object, and a rig without change as the same rig. What it returns
 * is always equal to what {@link buildRig} gives.
 */
export function createRigBuilder(): (layout: RigLayout) => Rig {
  const piecesOf = createKeeper<Piece, PlacedPiece>();
  const micsOf = createKeeper<Mic, PlacedMic>();
  const byPiece = remembered(
    (placed: readonly PlacedPiece[]) => new Map(placed.map((one) => [one.piece, one])),
  );
  let last: Rig | undefined;
  return (layout) => {
    const { pieces: kit, player, ownClasses } = layout;
    const pieces = piecesOf(kit, {
      around: [player.seatHeight],
      needs: (piece) => [seatUnder(piece, layout)],
      place: (piece) => placePiece(piece, layout),
    });
    const surroundings = { pieces: kit, player, ownClasses, placed: byPiece(pieces) };
    const mics = micsOf(layout.mics, {
      around: [kit, ownClasses],
      needs: (mic) => micNeeds(mic, layout),
      place: (mic) => placeMic(mic, surroundings),
    });
    if (last?.pieces !== pieces || last.mics !== mics) last = { pieces, mics };
    return last;
  };
}

interface Placing<Thing, Placed> {
  /** While all of this is the same as before, so is what any thing needs. */
  readonly around: readonly unknown[];
  /** The values that a thing's place is made from beside the thing itself. */
  readonly needs: (thing: Thing) => readonly unknown[];
  readonly place: (thing: Thing) => Placed;
}

/** A placed thing with what its place was made from. */
interface Kept<Thing, Placed> {
  readonly thing: Thing;
  readonly needs: readonly unknown[];
  readonly placed: Placed;
}

/** Places things, keeping what is placed already; a list in which nothing changed comes back as the same list. */
function createKeeper<Thing extends { readonly id: string }, Placed>() {
  const sameAround = sameList<unknown>();
  const samePlaced = sameList<Placed>();
  let last: Placement<Thing, Placed> | undefined;
  return (things: readonly Thing[], placing: Placing<Thing, Placed>): readonly Placed[] => {
    const around = sameAround(placing.around);
    const isStill = around === last?.around;
    if (isStill && things === last?.things) return last.placed;
    const kept = listed(things, (thing) => {
      const was = last?.known.get(thing.id);
      const same = was?.thing === thing ? was : undefined;
      if (same && isStill) return same;
      const needs = placing.needs(thing);
      return same && isSameList(same.needs, needs)
        ? same
        : { thing, needs, placed: placing.place(thing) };
    });
    const known = new Map(kept.map((one) => [one.thing.id, one]));
    last = { around, things, known, placed: samePlaced(listed(kept, ({ placed }) => placed)) };
    return last.placed;
  };
}

/** How a whole list was placed the last time. */
interface Placement<Thing, Placed> {
  readonly around: readonly unknown[];
  readonly things: readonly Thing[];
  readonly known: ReadonlyMap<string, Kept<Thing, Placed>>;
  readonly placed: readonly Placed[];
}

const seatUnder = (piece: Piece, { player }: RigLayout): number | undefined =>
  piece.kind === 'throne' ? player.seatHeight : undefined;

/** The mic's class, and for a mic on or in a piece that piece with everything that carries it. */
function micNeeds(mic: Mic, layout: RigLayout): readonly unknown[] {
  const { mount } = mic;
  const owner = mount.kind === 'clip' ? mount.drum : mount.kind === 'plateInKick' ? mount.kick : '';
  const piece = layout.pieces.find(({ id }) => id === owner);
  const chain = piece ? carriers(piece, layout) : [];
  return [findMicClass(layout, mic.micClass), piece, ...chain];
}
