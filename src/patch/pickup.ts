import type { Drum } from '../layout/pieces/drum.ts';
import type { Kick } from '../layout/pieces/kick.ts';
import { isCymbal, isDrum, type Piece } from '../layout/pieces/piece.ts';
import { kickFrame } from '../rig/pieces/kickFrame.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import { surfaceOf } from '../rig/surface.ts';
import type { Mm } from '../units/quantity.ts';

/** What a channel is for: the kind of its own source, or an overhead. `none`: the mic is said to hear nothing that sounds. */
export type PatchSource =
  | 'kick'
  | 'snare'
  | 'hiHat'
  | 'rackTom'
  | 'floorTom'
  | 'percussion'
  | 'ride'
  | 'cymbal'
  | 'overhead'
  | 'none';

/** Where a close mic of a drum is: over the struck head or under the drum; of a kick: before the front head or at the beater's side. */
export type HeadPlace = 'top' | 'bottom' | 'inside' | 'front' | 'batter';

/** A mic with what it is there for. */
export interface Pickup {
  readonly placed: PlacedMic;
  readonly source: PatchSource;
  /** Its own source: the first piece it hears that sounds. */
  readonly own: Piece | undefined;
  /** Undefined for what is no close mic of a drum. */
  readonly place: HeadPlace | undefined;
  /** How a stroke first arrives (A3); undefined for what has no place, and where only listening tells. */
  readonly first: 'compression' | 'rarefaction' | undefined;
}

/** A1 An overhead for one cymbal alone stands at least this far above it. */
const OVERHEAD_ABOVE: Mm = 400;
/** A3 A mic is clearly on one side of a head when the way from the head to it rises at least 30 degrees from it: its sine. */
const SURE = 0.5;

/**
 * The mics of a rig with what each is there for, in the rig's order.
 *
 * A1 An overhead hears a cymbal or hi-hat among other things, or one alone from at least 400 mm above it, and stands above all
 *    that it hears. Any other mic that hears something is a close mic of the first piece it hears.
 * A2 A close mic of a drum is inside its shell, or on the side of the head that is nearer.
 * A3 A stroke moves both heads in the direction of the stick. Before the struck head air is first thinned, beyond the other
 *    head pressed together; inside it is pressed together before the struck head and thinned at the other head's back.
 * A1 and A3 are the rules by which the acoustics tell overheads and starts (H20 to H22).
 */
export const pickupsOf = ({ pieces, mics }: Rig): readonly Pickup[] =>
  mics.map(pickupAmong(pieces));

/** What a mic is there for (A1 to A3) among these pieces. */
export function pickupAmong(placedPieces: Rig['pieces']): (placed: PlacedMic) => Pickup {
  const pieces = new Map(placedPieces.map(({ piece }) => [piece.id, piece]));
  return (placed) => {
    const heard: Piece[] = [];
    for (const id of placed.mic.hears) {
      const piece = pieces.get(id);
      if (piece && sounds(piece)) heard.push(piece);
    }
    const own = heard[0];
    const silent = { placed, own, place: undefined, first: undefined };
    if (!own) return { ...silent, source: 'none' };
    if (isOverhead(placed, heard)) return { ...silent, source: 'overhead' };
    const source = closeSource(own);
    if (own.kind !== 'kick' && !isDrum(own)) return { ...silent, source };
    return { ...silent, source, ...atHead(placed, own) };
  };
}

const sounds = ({ kind }: Piece): boolean => kind !== 'pedal' && kind !== 'throne';

function isOverhead({ tip }: PlacedMic, heard: readonly Piece[]): boolean {
  if (!heard.some((piece) => isCymbal(piece) || piece.kind === 'hiHat')) return false;
  let highest = Number.NEGATIVE_INFINITY;
  for (const piece of heard) highest = Math.max(highest, heightOf(piece));
  const above = tip.z - highest;
  return above > 0 && (heard.length > 1 || above >= OVERHEAD_ABOVE);
}

function heightOf(piece: Piece): Mm {
  if (piece.kind === 'kick') return kickFrame(piece).backHead.z;
  return 'z' in piece ? piece.z : 0;
}

function closeSource({ kind }: Piece): PatchSource {
  switch (kind) {
    case 'crash':
    case 'splash':
    case 'china':
      return 'cymbal';
    case 'pedal':
    case 'throne':
      return 'none';
    default:
      return kind;
  }
}

function atHead(placed: PlacedMic, drum: Drum | Kick): Pick<Pickup, 'place' | 'first'> {
  const { centre, normal, radius } = headOf(drum);
  const { tip, axis } = placed;
  const from = { x: tip.x - centre.x, y: tip.y - centre.y, z: tip.z - centre.z };
  const above = from.x * normal.x + from.y * normal.y + from.z * normal.z;
  const aside = Math.hypot(
    from.x - above * normal.x,
    from.y - above * normal.y,
    from.z - above * normal.z,
  );
  if (above < 0 && above > -drum.depth && aside < radius) {
    const looksAtStruck = axis.x * normal.x + axis.y * normal.y + axis.z * normal.z > 0;
    return { place: 'inside', first: looksAtStruck ? 'compression' : 'rarefaction' };
  }
  const onStruckSide = above > -drum.depth / 2;
  const before = onStruckSide ? above : -drum.depth - above;
  const isSure = before >= SURE * Math.hypot(before, Math.max(0, aside - radius));
  const [struckSide, otherSide] =
    drum.kind === 'kick' ? (['batter', 'front'] as const) : (['top', 'bottom'] as const);
  const first = onStruckSide ? 'rarefaction' : 'compression';
  return {
    place: onStruckSide ? struckSide : otherSide,
    first: isSure ? first : undefined,
  };
}

/** The struck head: its centre, its unit normal on the side of the stick or beater, its radius. */
function headOf(
  drum: Drum | Kick,
): Pick<ReturnType<typeof surfaceOf>, 'centre' | 'normal' | 'radius'> {
  if (drum.kind !== 'kick') return surfaceOf(drum);
  const { backHead, front } = kickFrame(drum);
  const normal = { x: -front.x, y: -front.y, z: -front.z };
  return { centre: backHead, normal, radius: drum.diameter / 2 };
}
