import { outsideOutline } from '../../geometry/planSegments.ts';
import { type Vec2, vec } from '../../geometry/vector.ts';
import type { Deck } from '../../layout/deck.ts';
import type { Id } from '../../layout/fields.ts';
import type { Mm } from '../../units/quantity.ts';
import { deckOutline, toDeck } from '../deckFrame.ts';
import { LEG_RADIUS } from '../feet.ts';
import type { Footprint, PlacedMic, PlacedPiece } from '../placed.ts';
import { type Standing, worstOfEach } from './standing.ts';

/** A spot on the deck with the radius that must rest on it. */
interface Rest {
  readonly spot: Vec2;
  readonly radius: Mm;
}

/**
 * K8 Every foot, disc and pedal must stand on the deck whole. Shells and outlines may hang over its edge. `overlap` is how
 *    far the worst foot stands out.
 */
export function micOffDeck({ mic, stand, solids }: PlacedMic, deck: Deck): readonly Standing[] {
  const plates = solids.filter(({ part }) => part === 'plate' && mic.mount.kind === 'plateOnDeck');
  const rests = [
    ...(stand ? restsOf(stand.footprint) : []),
    ...plates.flatMap(({ capsule: { a, b, radius } }) => [
      { spot: a, radius },
      { spot: b, radius },
    ]),
  ];
  return offDeck('base-off-deck', mic.id, rests, deck);
}

/** K8 for a piece. */
export function pieceOffDeck(
  { piece, footprints, outlines }: PlacedPiece,
  deck: Deck,
): readonly Standing[] {
  const pedals = piece.kind === 'pedal' ? outlines : [];
  const rests = [
    ...footprints.flatMap(restsOf),
    ...pedals.flatMap((outline) => outline.map((spot) => ({ spot, radius: 0 }))),
  ];
  return offDeck('piece-off-deck', piece.id, rests, deck);
}

function restsOf({ hub, hubRadius, feet }: Footprint): Rest[] {
  if (feet.length === 0) return [{ spot: hub, radius: hubRadius }];
  return feet.map((spot) => ({ spot, radius: LEG_RADIUS }));
}

function offDeck(
  code: 'base-off-deck' | 'piece-off-deck',
  id: Id,
  rests: readonly Rest[],
  deck: Deck,
): readonly Standing[] {
  const outline = deckOutline(deck);
  return worstOfEach(
    rests.map(({ spot, radius }) => ({
      code,
      about: [id],
      place: vec(spot.x, spot.y, 0),
      overlap: outsideOutline(outline, toDeck(deck, spot)) + radius,
    })),
  );
}
