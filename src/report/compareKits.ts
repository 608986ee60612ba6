import { remembered } from '../geometry/remembered.ts';
import { distance, dot, type Vec3, vec } from '../geometry/vector.ts';
import { type Difference, differences } from '../layout/differences.ts';
import type { Id } from '../layout/fields.ts';
import { isStruck, type Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { type SignedParts, signedMic, signedPiece } from '../layout/signed.ts';
import { buildRig } from '../rig/buildRig.ts';
import { kickFrame } from '../rig/pieces/kickFrame.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import { surfaceOf } from '../rig/surface.ts';
import { cosDeg, sinDeg, toDegrees } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';

/** One mic or piece that is not as it was. */
export interface ThingChange {
  readonly id: Id;
  /** Its name now; as it was when it is gone. */
  readonly name: string;
  readonly change: 'new' | 'gone' | 'changed';
  /** How far the mic's tip or the piece's middle moved in space; 0 for what is new or gone. */
  readonly moved: Mm;
  /** By how much the mic's axis, the playing surface or the way it faces turned. */
  readonly turned: Degrees;
  /** How far the hub of its stand moved on the plan; 0 without one. */
  readonly base: Mm;
  /** Every field of its own that is not the same, place and direction included; none where it moved with what carries it. */
  readonly fields: readonly Difference[];
}

/** How one kit differs from another: what is signed off, and nothing else (rules N1 to N4). */
export interface KitChanges {
  readonly player: readonly Difference[];
  readonly pieces: readonly ThingChange[];
  readonly mics: readonly ThingChange[];
}

/** A kit with everything of it in space. */
export interface PlacedKit {
  readonly parts: SignedParts;
  readonly rig: Rig;
}

/** Moves and turns below these are noise of arithmetic. */
const STILL: Mm = 1e-6;
const UNTURNED: Degrees = 1e-4;

export const placedKit = (parts: SignedParts): PlacedKit => ({ parts, rig: buildRig(parts) });

/**
 * What changed from one kit to another, told by ids:
 * V1 a thing is changed when its signed form is not the same, or when it stands elsewhere in space because what carries it moved;
 * V2 how far and by how much is measured in the kit frame, so that a kit moved whole on its deck has not changed;
 * V3 swapped, the same things are changed, by the same distances and angles; equal kits have no change.
 */
export const compareKits = (before: PlacedKit, after: PlacedKit): KitChanges =>
  changesFrom(before)(after);

/** What changed from one kit to one after another; what is the same object as in a kit asked about before is not compared again. */
export function changesFrom({ parts, rig }: PlacedKit): (after: PlacedKit) => KitChanges {
  const playerChanges = remembered((player: Player) => differences(parts.player, player));
  const pieceChanges = changesOf(parts.pieces, (piece) => piece, pieceChange);
  const micChanges = remembered((ownClasses: OwnClasses) =>
    changesOf(
      rig.mics,
      ({ mic }) => mic,
      (was, is) => micChange(was, is, { before: parts.ownClasses, after: ownClasses }),
    ),
  );
  return (after) => ({
    player: playerChanges(after.parts.player),
    pieces: pieceChanges(after.parts.pieces),
    mics: micChanges(after.parts.ownClasses)(after.rig.mics),
  });
}

type OwnClasses = SignedParts['ownClasses'];

export const isUnchanged = ({ player, pieces, mics }: KitChanges): boolean =>
  player.length + pieces.length + mics.length === 0;

interface Named {
  readonly id: Id;
  readonly name: string;
}

/** Of things before: those that are in the second list, in its order, then those that are only in the first. */
function changesOf<Thing extends object>(
  before: readonly Thing[],
  named: (thing: Thing) => Named,
  between: (was: Thing, is: Thing) => ThingChange | undefined,
): (after: readonly Thing[]) => readonly ThingChange[] {
  const known = new Map(before.map((thing) => [named(thing).id, thing]));
  const changeOf = remembered((is: Thing) => {
    const was = known.get(named(is).id);
    return was ? between(was, is) : bare(named(is), 'new');
  });
  return (after) => {
    const left = new Set(after.map((thing) => named(thing).id));
    return [
      ...after.flatMap((thing) => changeOf(thing) ?? []),
      ...before
        .map(named)
        .filter(({ id }) => !left.has(id))
        .map((thing) => bare(thing, 'gone')),
    ];
  };
}

const bare = ({ id, name }: Named, change: ThingChange['change']): ThingChange => ({
  id,
  name,
  change,
  moved: 0,
  turned: 0,
  base: 0,
  fields: [],
});

function pieceChange(was: Piece, is: Piece): ThingChange | undefined {
  const fields = differences(signedPiece(was), signedPiece(is));
  if (fields.length === 0) return undefined;
  return {
    ...bare(is, 'changed'),
    moved: still(distance(middleOf(was), middleOf(is))),
    turned: unturned(angle(facingOf(was), facingOf(is))),
    base: still(distance(hubOf(was), hubOf(is))),
    fields,
  };
}

function micChange(
  from: PlacedMic,
  to: PlacedMic,
  ownClasses: { readonly before: OwnClasses; readonly after: OwnClasses },
): ThingChange | undefined {
  const fields = differences(
    signedMic(from.mic, ownClasses.before),
    signedMic(to.mic, ownClasses.after),
  );
  const moved = still(distance(from.tip, to.tip));
  const turned = unturned(angle(from.axis, to.axis));
  if (fields.length === 0 && moved === 0 && turned === 0) return undefined;
  const hub = from.stand?.footprint.hub;
  const hubNow = to.stand?.footprint.hub;
  const base = hub && hubNow ? still(Math.hypot(hubNow.x - hub.x, hubNow.y - hub.y)) : 0;
  return { ...bare(to.mic, 'changed'), moved, turned, base, fields };
}

const ORIGIN = vec(0, 0, 0);
const middleOf = (piece: Piece): Vec3 =>
  piece.kind === 'throne' ? ORIGIN : vec(piece.x, piece.y, 'z' in piece ? piece.z : 0);

/** The playing surface's normal, or the way a kick, a pedal or a throne's first leg faces. */
function facingOf(piece: Piece): Vec3 {
  if (isStruck(piece)) return surfaceOf(piece).normal;
  return piece.kind === 'kick'
    ? kickFrame(piece).front
    : vec(cosDeg(piece.turn), sinDeg(piece.turn), 0);
}

/** Where a piece's own stand stands on the plan. */
function hubOf(piece: Piece): Vec3 {
  return isStruck(piece) && piece.support.kind === 'stand'
    ? vec(piece.x + piece.support.dx, piece.y + piece.support.dy, 0)
    : ORIGIN;
}

const angle = (p: Vec3, q: Vec3): Degrees => {
  const cosine = dot(p, q);
  return toDegrees(Math.acos(Math.min(1, Math.max(-1, cosine))));
};
const still = (size: Mm): Mm => (size < STILL ? 0 : size);
const unturned = (turn: Degrees): Degrees => (turn < UNTURNED ? 0 : turn);
