import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Degrees, Mm } from '../../units/quantity.ts';
import type { Id } from '../fields.ts';
import { type Layout, layoutSchema } from '../layout.ts';
import { isStruck, type Piece, pieceSchema, type Struck } from '../pieces/piece.ts';
import type { Hands } from '../pieces/struck.ts';
import { carrierOf } from '../references.ts';
import { mostEntries } from '../schema/listLimit.ts';
import { changeMic, changePiece } from './change.ts';
import { freshId } from './ids.ts';
import { moveThrone } from './throne.ts';
import { tidy, tidyAzimuth, tidySpot } from './tidy.ts';

/** A spot on the plan, kit frame. */
export interface Spot {
  readonly x: Mm;
  readonly y: Mm;
}

const MOST_PIECES = mostEntries(layoutSchema.shape.pieces);

/**
 * A layout with one more piece, the last of its pieces; it gets a fresh id when its own is taken. Without effect: a second
 * throne, one piece too many, a piece that its own schema refuses or whose carrier is not there.
 */
export function addPiece(layout: Layout, piece: Piece): Layout {
  const by = carrierOf(piece);
  const hasThrone = layout.pieces.some(({ kind }) => kind === 'throne');
  if (
    layout.pieces.length >= MOST_PIECES ||
    (piece.kind === 'throne' && hasThrone) ||
    (by !== undefined && !layout.pieces.some(({ id }) => id === by)) ||
    !pieceSchema.safeParse(piece).success
  ) {
    return layout;
  }
  return { ...layout, pieces: [...layout.pieces, { ...piece, id: freshId(layout, piece.id) }] };
}

/** Moves a piece on the plan, and with it what its hardware holds. Moving the throne moves the kit frame: see `moveThrone`. */
export function movePiece(layout: Layout, id: Id, to: Spot): Layout {
  const piece = layout.pieces.find((entry) => entry.id === id);
  if (!piece) return layout;
  if (piece.kind === 'throne') return moveThrone(layout, to);
  const [dx, dy] = [to.x - piece.x, to.y - piece.y];
  return [id, ...heldBy(layout, id)].reduce(
    (moved, each) =>
      changePiece(moved, each, (entry) =>
        entry.kind === 'throne' ? entry : { ...entry, ...tidySpot(entry.x + dx, entry.y + dy) },
      ),
    layout,
  );
}

/** Sets the height of a piece's playing surface (a kick: of its centre) above the deck. */
export const raisePiece = (layout: Layout, id: Id, z: Mm): Layout =>
  changePiece(layout, id, (piece) => ('z' in piece ? { ...piece, z: tidy(z) } : piece));

/** Leans a piece: how far from level, and toward which direction when given. For a kick it is the rise of its front. */
export const tiltPiece = (layout: Layout, id: Id, tilt: Degrees, toward?: Degrees): Layout =>
  changePiece(layout, id, (piece) => {
    if (piece.kind === 'kick') return { ...piece, rise: tidy(tilt) };
    if (!isStruck(piece)) return piece;
    const tiltToward = toward === undefined ? piece.tiltToward : tidyAzimuth(toward);
    return { ...piece, tilt: tidy(tilt), tiltToward };
  });

/** Turns a piece about the upright through its centre (a pedal: its heel) with its feet and what is clipped to it. Positive: anticlockwise from above. */
export function turnPiece(layout: Layout, id: Id, by: Degrees): Layout {
  const turned = changePiece(layout, id, (piece) =>
    isStruck(piece) ? turnedStruck(piece, by) : { ...piece, turn: tidyAzimuth(piece.turn + by) },
  );
  return layout.mics
    .filter(({ mount }) => mount.kind === 'clip' && mount.drum === id)
    .reduce(
      (kit, mic) =>
        changeMic(kit, mic.id, (each) =>
          each.mount.kind === 'clip'
            ? { ...each, mount: { ...each.mount, angle: tidyAzimuth(each.mount.angle + by) } }
            : each,
        ),
      turned,
    );
}

/** Turns only the feet of a piece's stand or legs, so that they pass those of another. */
export const turnFeet = (layout: Layout, id: Id, turn: Degrees): Layout =>
  changePiece(layout, id, (piece) => {
    if (piece.kind === 'throne') return { ...piece, turn: tidyAzimuth(turn) };
    if (!isStruck(piece) || piece.support.kind === 'held') return piece;
    if (piece.kind === 'hiHat') {
      return { ...piece, support: { ...piece.support, turn: tidyAzimuth(turn) } };
    }
    return { ...piece, support: { ...piece.support, turn: tidyAzimuth(turn) } };
  });

/** Sets the diameter of a piece and, where it has one, its depth. A kick stays on its spurs: its centre rises with its radius. */
export const resizePiece = (layout: Layout, id: Id, diameter: Mm, depth?: Mm): Layout =>
  changePiece(layout, id, (piece) => {
    if (piece.kind === 'pedal') return piece;
    if (!('depth' in piece)) return { ...piece, diameter };
    const sized = { ...piece, diameter, depth: depth ?? piece.depth };
    return sized.kind === 'kick'
      ? { ...sized, z: tidy(sized.z + (diameter - piece.diameter) / 2) }
      : sized;
  });

export const renamePiece = (layout: Layout, id: Id, name: string): Layout =>
  changePiece(layout, id, (piece) => ({ ...piece, name }));

/** Sets which hands play a piece. */
export const setHands = (layout: Layout, id: Id, hands: Hands): Layout =>
  changePiece(layout, id, (piece) => (isStruck(piece) ? { ...piece, hands } : piece));

/** Ids of all pieces that a piece's hardware holds, and what those hold. */
export function heldBy(layout: Layout, id: Id): readonly Id[] {
  const found: Id[] = [];
  const visit = (by: Id): void => {
    for (const piece of layout.pieces) {
      if (carrierOf(piece) === by && !found.includes(piece.id) && piece.id !== id) {
        found.push(piece.id);
        visit(piece.id);
      }
    }
  };
  visit(id);
  return found;
}

function turnedStruck(piece: Struck, by: Degrees): Struck {
  const tiltToward = tidyAzimuth(piece.tiltToward + by);
  if (piece.kind === 'hiHat') {
    return { ...piece, tiltToward, support: { ...piece.support, ...turnedHub(piece.support, by) } };
  }
  const { support } = piece;
  if (support.kind === 'held') return { ...piece, tiltToward };
  if (support.kind === 'legs') {
    return { ...piece, tiltToward, support: { ...support, turn: tidyAzimuth(support.turn + by) } };
  }
  return { ...piece, tiltToward, support: { ...support, ...turnedHub(support, by) } };
}

const turnedHub = (
  { dx, dy, turn }: { readonly dx: Mm; readonly dy: Mm; readonly turn: Degrees },
  by: Degrees,
): { dx: Mm; dy: Mm; turn: Degrees } => ({
  dx: tidy(dx * cosDeg(by) - dy * sinDeg(by)),
  dy: tidy(dx * sinDeg(by) + dy * cosDeg(by)),
  turn: tidyAzimuth(turn + by),
});
