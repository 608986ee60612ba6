import { standSpec } from '../layout/catalogue/standClasses.ts';
import { turnMicStand } from '../layout/edit/mics.ts';
import { turnFeet } from '../layout/edit/pieces.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { isStruck, type Piece } from '../layout/pieces/piece.ts';
import { wrapDegrees } from '../units/angle.ts';
import type { Degrees } from '../units/quantity.ts';
import type { PlacedMic, PlacedPiece, Rig } from './placed.ts';
import { placeMic } from './placeMic.ts';
import { placePiece } from './placePiece.ts';
import { createStandingFinder } from './standing/findStanding.ts';
import type { Standing } from './standing/standing.ts';

/** Feet of a stand, of a throne or of a drum's own legs, turned about their hub. */
export interface FeetTurn {
  readonly id: Id;
  /** Anticlockwise from above when positive; whole degrees. */
  readonly by: Degrees;
  /** Direction of the first leg after the turn, as the layout keeps it. */
  readonly turn: Degrees;
}

/** How the legs of one thing stand. */
interface Legs {
  readonly turn: Degrees;
  readonly count: number;
}

/** Smaller growths of an overlap are rounding. */
const SAME = 1e-6;

/**
 * S5 The smallest turn of a thing's feet, in whole degrees either way, after which they are in no one's way (K6) and nothing else that was
 *    wrong with the thing is worse and nothing new is. Beyond half the angle between two legs a turn repeats itself. For a mic
 *    `serves` may ask more. Undefined where no turn does it, and for a thing without legs to turn.
 */
export function freeTurn(
  layout: Layout,
  rig: Rig,
  id: Id,
  serves: (turned: PlacedMic) => boolean = () => true,
): FeetTurn | undefined {
  const legs = legsOf(layout, id);
  if (!legs) return undefined;
  const find = createStandingFinder();
  const before = aboutOf(find(rig, layout.deck), id);
  const half = Math.floor((legs.count === 2 ? 360 : 360 / legs.count) / 2);
  for (let size = 1; size <= half; size += 1) {
    for (const by of [size, -size]) {
      const turn = wrapDegrees(legs.turn + by);
      const turned = withTurn(layout, rig, { id, by, turn });
      const after = aboutOf(find(turned, layout.deck), id);
      const mic = turned.mics.find((placed) => placed.mic.id === id);
      if (isBetter(before, after) && (!mic || serves(mic))) return { id, by, turn };
    }
  }
  return undefined;
}

/** The layout with the feet turned. */
export const turnedFeet = (layout: Layout, { id, turn }: FeetTurn): Layout =>
  layout.mics.some((mic) => mic.id === id)
    ? turnMicStand(layout, id, turn)
    : turnFeet(layout, id, turn);

function legsOf({ mics, pieces }: Layout, id: Id): Legs | undefined {
  const mount = mics.find((mic) => mic.id === id)?.mount;
  if (mount?.kind === 'stand') {
    return standSpec(mount.stand).base === 'tripod' ? { turn: mount.turn, count: 3 } : undefined;
  }
  const piece = pieces.find((each) => each.id === id);
  return piece && legsOfPiece(piece);
}

function legsOfPiece(piece: Piece): Legs | undefined {
  if (piece.kind === 'throne') return { turn: piece.turn, count: piece.legs };
  if (!isStruck(piece) || piece.support.kind === 'held') return undefined;
  const { support } = piece;
  return { turn: support.turn, count: support.kind === 'stand' ? support.legs : 3 };
}

/** The rig with one thing's feet turned; everything else is the same object as before. */
function withTurn(layout: Layout, { mics, pieces }: Rig, turn: FeetTurn): Rig {
  const turned = turnedFeet(layout, turn);
  return {
    mics: mics.map((placed): PlacedMic => {
      if (placed.mic.id !== turn.id) return placed;
      const mic = turned.mics.find(({ id }) => id === turn.id);
      return mic ? placeMic(mic, turned) : placed;
    }),
    pieces: pieces.map((placed): PlacedPiece => {
      if (placed.piece.id !== turn.id) return placed;
      const piece = turned.pieces.find(({ id }) => id === turn.id);
      return piece ? placePiece(piece, turned) : placed;
    }),
  };
}

/** What is wrong about one thing. */
export const aboutOf = (found: readonly Standing[], id: Id): readonly Standing[] =>
  found.filter(({ about }) => about.includes(id));

const keyOf = ({ code, about }: Standing): string => `${code} ${about.join(' ')}`;

/** Whether no feet overlap any more, nothing is worse than it was and nothing new is wrong. */
export function isBetter(before: readonly Standing[], after: readonly Standing[]): boolean {
  const known = new Map(before.map((found) => [keyOf(found), found.overlap]));
  return after.every(
    (found) =>
      found.code !== 'feet-overlap' && found.overlap <= (known.get(keyOf(found)) ?? -1) + SAME,
  );
}
