import type { Capsule } from '../geometry/capsule.ts';
import { along, dot, subtract, type Vec3, vec } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Kick } from '../layout/pieces/kick.ts';
import type { Pedal } from '../layout/pieces/pedal.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import { kickFrame } from '../rig/pieces/kickFrame.ts';
import { cosDeg, sinDeg, toDegrees } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';

/** What of a kick's pedal stands and swings over its board: capsules in the kit frame. */
export interface Beater {
  readonly pedal: Id;
  /** Every place that the beater and its shaft take between the head and all the way back. */
  readonly swept: readonly Capsule[];
  /** The axle and its two posts. */
  readonly frame: readonly Capsule[];
}

/** Common practice, no source, mm. */
const AXLE = { height: 150, beforeToe: 50, radius: 8 };
const POST_RADIUS: Mm = 10;
const SHAFT = { least: 120, most: 220, radius: 6 };
const BALL_RADIUS: Mm = 28;
/** How far back a beater goes from the head, and how far it leans toward one or away from one at most; upright is 0. */
const BACK: Degrees = 60;
const MOST_LEAN: Degrees = 35;
/** Between two neighbours of the fan: shafts leave no gap wider than 2 mm, and the ball's chords none. */
const STEP: Degrees = 4;

/**
 * L6 A kick's pedal has its axle 150 mm over the deck, 50 mm behind the toe's end. The beater, a ball of radius 28 on a shaft of radius 6, swings about it in the
 *    upright plane along the board, from where the ball touches the batter head to 60 degrees back. The shaft is as long as the drum's middle is over
 *    the axle, 120 to 220 mm. Where there is no head to touch it goes back from upright. Common practice, no source.
 */
export const beatersOf = (pieces: readonly Piece[]): readonly Beater[] =>
  pieces.flatMap((piece): Beater[] =>
    piece.kind === 'pedal' && piece.plays === 'kick' ? [beaterOf(piece, pieces)] : [],
  );

function beaterOf(pedal: Pedal, pieces: readonly Piece[]): Beater {
  const ahead = vec(cosDeg(pedal.turn), sinDeg(pedal.turn), 0);
  const axle = {
    ...along(vec(pedal.x, pedal.y, 0), ahead, pedal.length - AXLE.beforeToe),
    z: AXLE.height,
  };
  const { shaft, lean } = strikeOf({ axle, ahead }, pieces);
  /** Where the ball is when its shaft leans so far ahead, or the shaft's end where the ball begins. */
  const at = (angle: Degrees, out: Mm): Vec3 =>
    along(along(axle, ahead, out * sinDeg(angle)), vec(0, 0, 1), out * cosDeg(angle));
  const angles = Array.from({ length: BACK / STEP + 1 }, (_, k) => lean - k * STEP);
  return {
    pedal: pedal.id,
    swept: angles.flatMap((angle): Capsule[] => [
      { a: axle, b: at(angle, shaft), radius: SHAFT.radius },
      {
        a: at(angle, shaft),
        b: at(Math.max(lean - BACK, angle - STEP), shaft),
        radius: BALL_RADIUS,
      },
    ]),
    frame: frameOf(axle, ahead, pedal.width / 2 - POST_RADIUS),
  };
}

function frameOf(axle: Vec3, ahead: Vec3, half: Mm): readonly Capsule[] {
  const aside = vec(-ahead.y, ahead.x, 0);
  const [left, right] = [along(axle, aside, half), along(axle, aside, -half)];
  const post = (top: Vec3): Capsule => ({ a: { ...top, z: 0 }, b: top, radius: POST_RADIUS });
  return [{ a: left, b: right, radius: AXLE.radius }, post(left), post(right)];
}

interface Axle {
  readonly axle: Vec3;
  readonly ahead: Vec3;
}

interface Strike {
  readonly shaft: Mm;
  /** How far ahead of upright the shaft leans when the ball touches the head. */
  readonly lean: Degrees;
}

/** The strike on the first kick whose batter head the ball reaches; upright where there is none. */
function strikeOf(axle: Axle, pieces: readonly Piece[]): Strike {
  for (const piece of pieces) {
    const strike = piece.kind === 'kick' ? strikeOn(piece, axle) : undefined;
    if (strike) return strike;
  }
  return { shaft: SHAFT.most, lean: 0 };
}

function strikeOn(kick: Kick, { axle, ahead }: Axle): Strike | undefined {
  const { front, backHead } = kickFrame(kick);
  const shaft = Math.min(SHAFT.most, Math.max(SHAFT.least, backHead.z - axle.z));
  // The ball's middle is its radius before the head: toAxle + shaft (level sin lean + steep cos lean) = -radius.
  const toAxle = dot(subtract(axle, backHead), front);
  const level = dot(ahead, front);
  const share = (-BALL_RADIUS - toAxle) / (shaft * Math.hypot(level, front.z));
  if (level <= 0 || Math.abs(share) > 1) return undefined;
  const lean = toDegrees(Math.asin(share) - Math.atan2(front.z, level));
  if (Math.abs(lean) > MOST_LEAN) return undefined;
  const ball = along(along(axle, ahead, shaft * sinDeg(lean)), vec(0, 0, 1), shaft * cosDeg(lean));
  const off = subtract(ball, backHead);
  const fromMiddle = Math.sqrt(Math.max(0, dot(off, off) - dot(off, front) ** 2));
  return fromMiddle < kick.diameter / 2 ? { shaft, lean } : undefined;
}
