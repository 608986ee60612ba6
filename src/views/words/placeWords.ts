import type { Layout } from '../../layout/layout.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { isStruck, type Piece, type Struck } from '../../layout/pieces/piece.ts';
import type { Throne } from '../../layout/pieces/throne.ts';
import { edgeBeyond } from '../../report/placement/measures.ts';
import type { Finding } from '../../report/report.ts';
import { showLength } from '../../units/lengthText.ts';

type Place = NonNullable<Finding['place']>;
type Landmark = Struck | Kick;

/** Below this height a thing is said to be on the deck, mm. */
const ON_DECK = 60;
/** Within this part of the radius a place is over the middle. */
const MIDDLE = 0.4;

/**
 * A place of the kit frame in words, by the nearest drum or cymbal, on the deck by the throne too, from where the player sits: `over Rack
 * tom 1, on the side away from the player, 780 mm above the deck`; outside the deck also beyond which edge.
 */
export function placeWords(place: Place, layout: Layout): string {
  const edge = beyondWords(place, layout);
  if (place.z < ON_DECK) {
    const where = edge === '' ? 'on the deck' : edge;
    const by = besideThrone(place, layout.pieces) ?? besideLandmark(place, layout.pieces);
    return by === undefined ? where : `${where}, ${by}`;
  }
  const beyond = edge === '' ? '' : `, ${edge}`;
  const height = `${showLength(place.z, layout.units)} above the deck${beyond}`;
  const landmark = nearestLandmark(place, layout.pieces);
  if (!landmark) return height;
  return `${relation(place, landmark)} ${landmark.name}${sideOf(place, landmark)}, ${height}`;
}

/** `beyond the deck's left edge`; empty on the deck. */
function beyondWords(place: Place, layout: Layout): string {
  const edge = edgeBeyond(layout, place);
  return edge === null ? '' : `beyond the deck's ${edge} edge`;
}

function besideLandmark(place: Place, pieces: readonly Piece[]): string | undefined {
  const landmark = nearestLandmark(place, pieces);
  return landmark && `by ${landmark.name}${sideOf(place, landmark)}`;
}

/** `behind Throne`, where no drum or cymbal is nearer; the kit frame's y is where the player looks. */
function besideThrone(place: Place, pieces: readonly Piece[]): string | undefined {
  const throne = pieces.find((piece): piece is Throne => piece.kind === 'throne');
  if (!throne) return undefined;
  const landmark = nearestLandmark(place, pieces);
  const { x, y } = place;
  const beyondSeat = Math.hypot(x, y) - throne.diameter / 2;
  if (landmark && beyondEdge(place, landmark) < beyondSeat) return undefined;
  if (beyondSeat < 0) return `under ${throne.name}`;
  if (Math.abs(x) > Math.abs(y)) return `${x < 0 ? 'left' : 'right'} of ${throne.name}`;
  return `${y < 0 ? 'behind' : 'in front of'} ${throne.name}`;
}

function relation(place: Place, landmark: Landmark): string {
  if (landmark.kind === 'kick') return 'by';
  if (beyondEdge(place, landmark) > 0) return 'beside';
  return place.z < landmark.z ? 'under' : 'over';
}

const planDistance = (place: Place, landmark: Landmark) =>
  Math.hypot(place.x - landmark.x, place.y - landmark.y);

/** How far a place lies outside a landmark's edge on the plan, mm; below 0 within it. */
const beyondEdge = (place: Place, landmark: Landmark) =>
  planDistance(place, landmark) - landmark.diameter / 2;

function nearestLandmark(place: Place, pieces: readonly Piece[]): Landmark | undefined {
  let nearest: Landmark | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const piece of pieces) {
    if (!isStruck(piece) && piece.kind !== 'kick') continue;
    const apart = Math.max(0, beyondEdge(place, piece)) + Math.abs(place.z - piece.z) * 0.5;
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
