import { gap } from '../../../geometry/plan.ts';
import { cosDeg, sinDeg } from '../../../units/angle.ts';
import type { Degrees, Mm } from '../../../units/quantity.ts';
import { tidyAzimuth } from '../../edit/tidy.ts';
import type { Layout } from '../../layout.ts';
import { isStruck, type Piece } from '../../pieces/piece.ts';
import type { Support } from '../../pieces/support.ts';
import { edgeRoom, feetOfPiece, micFeet, roomOf } from '../offered/standingRoom.ts';
import { type Can, cansOf, hasRoom, playedBy } from './room.ts';

const LIFTS: readonly Mm[] = [0, 30, 60];
/** Room that is more by less than this is the same: rounding must not choose. */
const BETTER: Mm = 0.01;

interface Spot {
  readonly x: Mm;
  readonly y: Mm;
}

/** Room wanted round the feet of a piece that is put down for the user. */
const WANTED: Mm = 20;
/** A mast keeps this far from the edge of a piece that it passes. */
const MAST_BESIDE: Mm = 20;
/** Spots that are gone through for feet where the shell has room: one tap must not take long. */
const MOST_SPOTS = 60;

/**
 * Turns of the legs, then hubs farther and farther from under the piece, nearest first: a cymbal's arm reaches over a drum.
 * Of a right-handed kit; `side` -1 mirrors them.
 */
const TURNS: readonly Degrees[] = [0, 20, -20, 40, -40, 60];
const HUBS: readonly Spot[] = [
  { x: 0, y: 0 },
  ...[180, 350].flatMap((away) =>
    Array.from({ length: 8 }, (_, step) => ({
      x: Math.round(away * cosDeg(step * 45)),
      y: Math.round(away * sinDeg(step * 45)),
    })),
  ),
];

/**
 * A piece at the first of the spots where its shell is free, and its feet and mast too once its legs are turned or its hub is
 * moved; else where its feet are least in the way. Judged coarsely: findings give the verdict.
 */
export function freePlace(piece: Piece, spots: readonly Spot[], layout: Layout): Piece {
  const side = layout.player.leadHand === 'left' ? -1 : 1;
  const others = layout.pieces.filter(
    (other) => !playedBy(piece, other) && !playedBy(other, piece),
  );
  const taken = [...others.flatMap(feetOfPiece), ...micFeet(layout)];
  const shells = others.filter((other) => other.kind !== 'throne').flatMap(cansOf);
  let best: { readonly placed: Piece; readonly room: Mm } | undefined;
  let gone = 0;
  for (const spot of spots) {
    if (gone >= MOST_SPOTS) break;
    const there = liftedFree({ ...piece, ...spot }, layout);
    if (!there) continue;
    gone += 1;
    for (const placed of standings(there, side)) {
      const least = (best?.room ?? Number.NEGATIVE_INFINITY) + BETTER;
      const feet = feetOfPiece(placed);
      const around = Math.min(mastRoom(placed, shells), edgeRoom(layout, feet));
      const room = around <= least ? around : Math.min(around, roomOf(feet, taken, least));
      if (room >= WANTED) return placed;
      if (!best || room > least) best = { placed, room };
    }
  }
  return best?.placed ?? piece;
}

/** The piece where its shell is free; what another piece holds can also be a little higher. */
function liftedFree(piece: Piece, layout: Layout): Piece | undefined {
  const isHeld = isStruck(piece) && piece.support.kind === 'held';
  if (!isHeld) return hasRoom(piece, layout) ? piece : undefined;
  return LIFTS.map((lift) => ({ ...piece, z: piece.z + lift })).find((lifted) =>
    hasRoom(lifted, layout),
  );
}

/** A piece with its feet as they are, then turned and moved. */
function* standings(piece: Piece, side: 1 | -1): Generator<Piece, void> {
  if (!isStruck(piece) || piece.support.kind === 'held') {
    yield piece;
    return;
  }
  const { support } = piece;
  const hubs = support.kind === 'stand' && piece.kind !== 'hiHat' ? HUBS : HUBS.slice(0, 1);
  for (const hub of hubs) {
    for (const turn of TURNS) {
      yield withSupport(piece, stoodAt(support, { x: side * hub.x, y: hub.y }, side * turn));
    }
  }
}

function stoodAt(support: Support, hub: Spot, by: Degrees): Support {
  if (support.kind === 'held') return support;
  const turn = tidyAzimuth(support.turn + by);
  return support.kind === 'legs'
    ? { ...support, turn }
    : { ...support, turn, dx: support.dx + hub.x, dy: support.dy + hub.y };
}

/** A hi-hat always has a stand of its own. */
const withSupport = (piece: Piece, support: Support): Piece => {
  if (piece.kind === 'hiHat') return support.kind === 'stand' ? { ...piece, support } : piece;
  return isStruck(piece) ? { ...piece, support } : piece;
};

/** How far a piece's mast stands from all that is not wholly above the piece; no limit without a mast. */
function mastRoom(piece: Piece, shells: readonly Can[]): Mm {
  if (!isStruck(piece) || piece.support.kind !== 'stand') return WANTED;
  const hub = { x: piece.x + piece.support.dx, y: piece.y + piece.support.dy };
  const passed = shells.filter(({ low }) => low < piece.z);
  return Math.min(WANTED, ...passed.map((can) => gap(can, hub) - can.radius - MAST_BESIDE));
}
