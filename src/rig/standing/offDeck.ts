import { listed } from '../../geometry/listed.ts';
import { outsideOutline } from '../../geometry/planSegments.ts';
import { type Vec2, vec } from '../../geometry/vector.ts';
import type { Deck } from '../../layout/deck.ts';
import type { Id } from '../../layout/fields.ts';
import type { Mm } from '../../units/quantity.ts';
import { deckOutline, toDeck } from '../deckFrame.ts';
import { LEG_RADIUS } from '../feet.ts';
import type { Footprint, PlacedMic, PlacedPiece } from '../placed.ts';
import { type Standing, worstOfEach } from './standing.ts';

/** A spot with the radius round it that must rest on the deck, kit frame. */
export interface Rest {
  readonly spot: Vec2;
  readonly radius: Mm;
}

/**
 * K8 Every foot, disc and pedal must stand on the deck whole. Shells and outlines may hang over its edge. `overlap` is how
 *    far the worst foot stands out.
 */
export const micOffDeck = (placed: PlacedMic, deck: Deck): readonly Standing[] =>
  offDeck('base-off-deck', placed.mic.id, restsOfMic(placed), deck);

/** What of a mic must rest on the deck: the feet or the disc of its stand, or its plate. */
export function restsOfMic({ mic, stand, solids }: PlacedMic): readonly Rest[] {
  const plates = solids.filter(({ part }) => part === 'plate' && mic.mount.kind === 'plateOnDeck');
  return [
    ...(stand ? restsOf(stand.footprint) : []),
    ...plates.flatMap(({ capsule: { a, b, radius } }) => [
      { spot: a, radius },
      { spot: b, radius },
    ]),
  ];
}

/** K8 for a piece. */
export const pieceOffDeck = (placed: PlacedPiece, deck: Deck): readonly Standing[] =>
  offDeck('piece-off-deck', placed.piece.id, restsOfPiece(placed), deck);

/** What of a piece must rest on the deck: its feet, and a pedal whole. */
export function restsOfPiece({ piece, footprints, outlines }: PlacedPiece): readonly Rest[] {
  const pedals = piece.kind === 'pedal' ? outlines : [];
  return [
    ...footprints.flatMap(restsOf),
    ...pedals.flatMap((outline) => listed(outline, (spot) => ({ spot, radius: 0 }))),
  ];
}

function restsOf({ hub, hubRadius, feet }: Footprint): Rest[] {
  if (feet.length === 0) return [{ spot: hub, radius: hubRadius }];
  return listed(feet, (spot) => ({ spot, radius: LEG_RADIUS }));
}

function offDeck(
  code: 'base-off-deck' | 'piece-off-deck',
  id: Id,
  rests: readonly Rest[],
  deck: Deck,
): readonly Standing[] {
  const outline = deckOutline(deck);
  return worstOfEach(
    rests.flatMap(({ spot, radius }): Standing[] => {
      const at = toDeck(deck, spot);
      if (restsWithin(deck, at, radius)) return [];
      const overlap = outsideOutline(outline, at) + radius;
      return [{ code, about: [id], place: vec(spot.x, spot.y, 0), overlap }];
    }),
  );
}

/** Most rests are dismissed so, before they are measured exactly. */
const restsWithin = ({ width, depth }: Deck, { x, y }: Vec2<'deck'>, radius: Mm): boolean =>
  Math.abs(x) + radius <= width / 2 && Math.abs(y) + radius <= depth / 2;
