import { gap } from '../../geometry/plan.ts';
import type { Vec2, Vec3 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Piece } from '../../layout/pieces/piece.ts';
import { carrierOf } from '../../layout/references.ts';
import type { DescentPart, PlacedPiece } from '../placed.ts';
import { placePiece } from '../placePiece.ts';

/** What a way down depends on. */
export interface Kit extends Pick<Layout, 'pieces' | 'player'> {
  /** Its pieces in space, as far as they are known already. */
  readonly placed?: ReadonlyMap<Piece, PlacedPiece>;
}

/** A cable's way to the deck. */
export interface WayDown {
  readonly descent: readonly DescentPart[];
  readonly deckPoint: Vec2;
}

/**
 * M10 From a clip on a piece the cable goes over the piece to its support (the stand's mast, the nearest leg or spur),
 *     counted level on the plan, and down it, counted upright. A piece that another one holds is followed to the one that
 *     stands on the deck. Over a kick it drops to the shell's top and then goes over the shell to the nearer spur. Where
 *     nothing stands on the deck, it hangs straight down.
 */
export function wayDown(piece: Piece, from: Vec3, kit: Kit): WayDown {
  const carrier = carriers(piece, kit).at(-1);
  const placed = carrier && (kit.placed?.get(carrier) ?? placePiece(carrier, kit));
  const supports = placed?.footprints.map(({ hub }) => hub) ?? [];
  const [first, ...others] = supports;
  if (!carrier || !first) {
    return { descent: [{ along: 'air', length: from.z }], deckPoint: { x: from.x, y: from.y } };
  }
  const foot = others.reduce(
    (best, next) => (gap(from, next) < gap(from, best) ? next : best),
    first,
  );
  const level = gap(from, foot);
  if (carrier.kind !== 'kick') {
    return {
      descent: [
        { along: 'drum', length: level },
        { along: 'mast', length: from.z },
      ],
      deckPoint: foot,
    };
  }
  const drop = Math.max(0, from.z - (carrier.z + carrier.diameter / 2));
  return {
    descent: [
      { along: 'drum', length: drop },
      { along: 'shell', length: level + from.z - drop },
    ],
    deckPoint: foot,
  };
}

/** The piece, what holds it, what holds that, to the one that stands on the deck; empty when the chain does not end. */
export function carriers(piece: Piece, { pieces }: Pick<Kit, 'pieces'>): readonly Piece[] {
  const chain: Piece[] = [];
  let next: Piece | undefined = piece;
  while (next && !chain.includes(next)) {
    chain.push(next);
    const by = carrierOf(next);
    if (by === undefined) return chain;
    next = pieces.find(({ id }) => id === by);
  }
  return [];
}
