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
  let pieces = new Map<string, Kept<PlacedPiece>>();
  let mics = new Map<string, Kept<PlacedMic>>();
  let last: Rig | undefined;
  return (layout) => {
    const placedPieces = keep(layout.pieces, pieces, {
      needs: (piece) => [piece, seatUnder(piece, layout)],
      place: (piece) => placePiece(piece, layout),
    });
    const placedMics = keep(layout.mics, mics, {
      needs: (mic) => micNeeds(mic, layout),
      place: (mic) => placeMic(mic, layout),
    });
    pieces = placedPieces.kept;
    mics = placedMics.kept;
    const rig = { pieces: placedPieces.placed, mics: placedMics.placed };
    if (last && sameEntries(last.pieces, rig.pieces) && sameEntries(last.mics, rig.mics)) {
      return last;
    }
    last = rig;
    return rig;
  };
}

/** A placed thing with the values its place was made from. */
interface Kept<Placed> {
  readonly needs: readonly unknown[];
  readonly placed: Placed;
}

interface Placing<Thing, Placed> {
  readonly needs: (thing: Thing) => readonly unknown[];
  readonly place: (thing: Thing) => Placed;
}

function keep<Thing extends { readonly id: string }, Placed>(
  things: readonly Thing[],
  before: ReadonlyMap<string, Kept<Placed>>,
  { needs, place }: Placing<Thing, Placed>,
): { readonly placed: readonly Placed[]; readonly kept: Map<string, Kept<Placed>> } {
  const kept = new Map<string, Kept<Placed>>();
  const placed = things.map((thing) => {
    const now = needs(thing);
    const known = before.get(thing.id);
    const entry =
      known && sameEntries(known.needs, now) ? known : { needs: now, placed: place(thing) };
    kept.set(thing.id, entry);
    return entry.placed;
  });
  return { placed, kept };
}

const seatUnder = (piece: Piece, { player }: RigLayout): number | undefined =>
  piece.kind === 'throne' ? player.seatHeight : undefined;

/** The mic, its class, and for a mic on or in a piece that piece with everything that carries it. */
function micNeeds(mic: Mic, layout: RigLayout): readonly unknown[] {
  const { mount } = mic;
  const owner = mount.kind === 'clip' ? mount.drum : mount.kind === 'plateInKick' ? mount.kick : '';
  const piece = layout.pieces.find(({ id }) => id === owner);
  const chain = piece ? carriers(piece, layout) : [];
  return [mic, findMicClass(layout, mic.micClass), piece, ...chain];
}

const sameEntries = (p: readonly unknown[], q: readonly unknown[]): boolean =>
  p.length === q.length && p.every((entry, i) => Object.is(entry, q[i]));
