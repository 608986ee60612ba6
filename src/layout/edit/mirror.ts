import { wrapDegrees } from '../../units/angle.ts';
import type { Degrees, Mm } from '../../units/quantity.ts';
import type { Id } from '../fields.ts';
import type { Layout } from '../layout.ts';
import { type Mic, micSchema } from '../mics/mic.ts';
import type { Mount } from '../mics/mount.ts';
import type { Pedal } from '../pieces/pedal.ts';
import { type Piece, pieceSchema, type Struck } from '../pieces/piece.ts';
import type { Hands } from '../pieces/struck.ts';
import type { Support } from '../pieces/support.ts';
import type { Player } from '../player.ts';
import { mapShared } from './change.ts';
import { settled } from './settle.ts';

/**
 * The mirror image in the plane x = 0 of the kit frame. Twice mirrored is the same again, to the last bit for angles of
 * at most nine decimals in [0, 360), and an angle stays in [0, 360).
 */

/** The whole kit mirrored: pieces, mics, lead hand and feet. Deck, stairs and box stay where they are. */
export const mirrorKit = (layout: Layout): Layout => ({
  ...layout,
  player: mirroredPlayer(layout.player),
  pieces: mapShared(layout.pieces, settledMirror),
  mics: mapShared(layout.mics, mirroredMic),
});

/** The same with the player unchanged: who leads with the left behind a right-handed kit gets a left-handed one. */
export const mirrorUnderPlayer = (layout: Layout): Layout => ({
  ...mirrorKit(layout),
  player: layout.player,
});

/** One piece moved to its mirror image, with the mics clipped to it. */
export function mirrorPiece(layout: Layout, id: Id): Layout {
  const pieces = mapShared(layout.pieces, (piece) =>
    piece.id === id ? settledMirror(piece) : piece,
  );
  const mics = mapShared(layout.mics, (mic) => (clippedTo(mic, id) ? mirroredMic(mic) : mic));
  return pieces === layout.pieces && mics === layout.mics ? layout : { ...layout, pieces, mics };
}

/** One mic moved to its mirror image: a stand or plate across the kit, a clip round its own drum. A plate in a kick stays. */
export function mirrorMic(layout: Layout, id: Id): Layout {
  const mics = mapShared(layout.mics, (mic) => (mic.id === id ? mirroredMic(mic) : mic));
  return mics === layout.mics ? layout : { ...layout, mics };
}

const clippedTo = (mic: Mic, id: Id): boolean => mic.mount.kind === 'clip' && mic.mount.drum === id;

/** A piece or mic that is its own mirror image stays the same one. */
const settledMirror = (piece: Piece): Piece => settled(pieceSchema, piece, mirroredPiece(piece));

const mirroredMic = (mic: Mic): Mic =>
  settled(micSchema, mic, { ...mic, mount: mirroredMount(mic.mount) });

/** x -> -x, never -0. */
const mirroredX = (x: Mm): Mm => 0 - x;

/** a -> 180 - a, rounded to nine decimals so that a typed angle comes back as it was typed. */
const mirroredAzimuth = (angle: Degrees): Degrees =>
  wrapDegrees(Math.round((180 - angle) * 1e9) / 1e9);

const otherSide = { right: 'left', left: 'right' } as const;

const mirroredPlayer = (player: Player): Player => ({
  ...player,
  leadHand: otherSide[player.leadHand],
});

const mirroredHands = (hands: Hands): Hands =>
  hands === 'right' || hands === 'left' ? otherSide[hands] : hands;

function mirroredSupport(support: Support): Support {
  switch (support.kind) {
    case 'stand':
      return {
        ...support,
        dx: mirroredX(support.dx),
        turn: mirroredAzimuth(support.turn),
      };
    case 'legs':
      return { ...support, turn: mirroredAzimuth(support.turn) };
    case 'held':
      return support;
  }
}

/** The mirror image of a piece in the plane x = 0. */
export function mirroredPiece(piece: Piece): Piece {
  switch (piece.kind) {
    case 'throne':
      return { ...piece, turn: mirroredAzimuth(piece.turn) };
    case 'pedal':
      return mirroredPedal(piece);
    case 'kick':
      return {
        ...piece,
        x: mirroredX(piece.x),
        turn: mirroredAzimuth(piece.turn),
        port: piece.port && { ...piece.port, right: mirroredX(piece.port.right) },
      };
    default:
      return mirroredStruck(piece);
  }
}

const mirroredPedal = (pedal: Pedal): Pedal => ({
  ...pedal,
  x: mirroredX(pedal.x),
  turn: mirroredAzimuth(pedal.turn),
  foot: otherSide[pedal.foot],
});

function mirroredStruck(piece: Struck): Struck {
  const shared = {
    x: mirroredX(piece.x),
    tiltToward: mirroredAzimuth(piece.tiltToward),
    hands: mirroredHands(piece.hands),
  };
  if (piece.kind === 'hiHat') {
    const { dx, turn } = piece.support;
    const support = { ...piece.support, dx: mirroredX(dx), turn: mirroredAzimuth(turn) };
    return { ...piece, ...shared, support };
  }
  return { ...piece, ...shared, support: mirroredSupport(piece.support) };
}

/** The mirror image of a mount in the plane x = 0. */
export function mirroredMount(mount: Mount): Mount {
  switch (mount.kind) {
    case 'clip':
      return { ...mount, angle: mirroredAzimuth(mount.angle) };
    case 'stand':
      return {
        ...mount,
        base: { ...mount.base, x: mirroredX(mount.base.x) },
        tip: { ...mount.tip, x: mirroredX(mount.tip.x) },
        turn: mirroredAzimuth(mount.turn),
        azimuth: mirroredAzimuth(mount.azimuth),
      };
    case 'plateOnDeck':
      return { ...mount, x: mirroredX(mount.x), turn: mirroredAzimuth(mount.turn) };
    case 'plateInKick':
      return mount;
  }
}
