import type { Layout } from '../../layout/layout.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { isStruck, type Piece, type Struck } from '../../layout/pieces/piece.ts';
import type { Finding } from '../../report/report.ts';
import { showLength } from '../../units/lengthText.ts';

type Place = NonNullable<Finding['place']>;
type Landmark = Struck | Kick;

/** Below this height a thing is said to be on the deck, mm. */
const ON_DECK = 60;
/** Within this part of the radius a place is over the middle. */
const MIDDLE = 0.4;

/**
 * A place of the kit frame in words, by the nearest drum or cymbal, from where the player sits: `over Rack tom 1, on the
 * side away from the player, 780 mm above the deck`.
 */
export function placeWords(place: Place, layout: Layout): string {
  const unit = layout.units;
  const landmark = nearestLandmark(place, layout.pieces);
  if (place.z < ON_DECK) {
    return landmark ? `on the deck, by ${landmark.name}${sideOf(place, landmark)}` : 'on the deck';
  }
  const height = `${showLength(place.z, unit)} above the deck`;
  if (!landmark) return height;
  return `${relation(place, landmark)} ${landmark.name}${sideOf(place, landmark)}, ${height}`;
}

function relation(place: Place, landmark: Landmark): string {
  if (landmark.kind === 'kick') return 'by';
  if (planDistance(place, landmark) > landmark.diameter / 2) return 'beside';
  return place.z < landmark.z ? 'under' : 'over';
}

const planDistance = (place: Place, landmark: Landmark) =>
  Math.hypot(place.x - landmark.x, place.y - landmark.y);

function nearestLandmark(place: Place, pieces: readonly Piece[]): Landmark | undefined {
  let nearest: Landmark | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const piece of pieces) {
    if (!isStruck(piece) && piece.kind !== 'kick') continue;
    const beyondEdge = Math.max(0, planDistance(place, piece) - piece.diameter / 2);
    const apart = beyondEdge + Math.abs(place.z - piece.z) * 0.5;
    if (apart < least) {
      least = apart;
      nearest = piece;
    }
  }
  return nearest;
}

/** The side of a piece a place lies on, seen from the throne; empty over its middle. */
function sideOf(place: Place, landmark: Landmark): string {
  const away = planDistance(place, landmark);
  if (away < (MIDDLE * landmark.diameter) / 2) return '';
  const toPlayer = Math.hypot(landmark.x, landmark.y) || 1;
  const dx = (place.x - landmark.x) / away;
  const dy = (place.y - landmark.y) / away;
  const toward = -(dx * landmark.x + dy * landmark.y) / toPlayer;
  if (toward > Math.SQRT1_2) return ", on the player's side";
  if (toward < -Math.SQRT1_2) return ', on the side away from the player';
  const leftward = (landmark.x * dy - landmark.y * dx) / toPlayer;
  return `, on its ${leftward > 0 ? 'left' : 'right'} as the player sees it`;
}
