import type { Player } from '../layout/player.ts';
import type { Mm } from '../units/quantity.ts';
import { type ArmLinks, elbowFoot, HANG_X, HANG_Z } from './armLinks.ts';
import { bodyOf } from './body.ts';
import { ElbowBow, type GripWay } from './elbowBow.ts';

/**
 * A position of the arm in hand space, 15 numbers in a row (mm): elbow, grip, grip again, stick's butt, stick's tip. So the
 * forearm is the segment at 0, the hand (a ball) the one at 3, the stick the one at 9.
 */
export const POSITION = 15;
export const ELBOW = 0;
export const GRIP = 3;
export const BUTT = 9;
export const TIP = 12;

/** A moving part of the arm: where its segment stands in a position. */
export interface ArmPart {
  readonly name: 'stick' | 'hand' | 'forearm';
  readonly at: number;
  readonly radius: Mm;
}

/** Rule A1: the hand is a ball of 45 mm about the grip, the forearm a capsule of 40 mm from elbow to grip. */
export const HAND_RADIUS = 45;
export const FOREARM_RADIUS = 40;
/** Rule A2: an arm reaches without leaning to 0.98 of its links together; from there the trunk leans, at most by the player's `lean`. */
const STRETCH = 0.98;
const HANG_SIZE = Math.hypot(HANG_X, HANG_Z);
/** Where the hang direction runs along the arm it says nothing; the elbow then points outward (rule A3, its limit case). */
const NO_SIDE = 1e-9;
/** An elbow nearer than this to the line from shoulder to grip, in upper arms, bounds its way by the range of the arm's angle. */
const FLAT = 0.2;

/** A bow of at most this share of the grip's way is not looked at twice: the elbow's room is seldom less. */
const SMALL_BOW = 0.25;

/** The arm of a player, as a right arm in hand space. */
export class Arm implements ArmLinks {
  readonly shoulderX: Mm;
  readonly shoulderZ: Mm;
  readonly upper: Mm;
  readonly fore: Mm;
  /** From the grip to the stick's tip, and back to its butt. */
  readonly ahead: Mm;
  readonly behind: Mm;
  /** Stick, hand, forearm. */
  readonly parts: readonly [ArmPart, ArmPart, ArmPart];
  readonly easy: Mm;
  readonly lean: Mm;
  private readonly bow: ElbowBow;

  constructor(player: Player) {
    const body = bodyOf(player);
    this.shoulderX = body.biacromialBreadth / 2;
    this.shoulderZ = player.seatHeight + body.acromialHeightSitting;
    this.upper = body.acromionRadiale;
    this.fore = body.radialeStylion + body.stylionToGripCentre;
    this.ahead = player.stick.length - player.stick.butt;
    this.behind = player.stick.butt;
    this.easy = STRETCH * (this.upper + this.fore);
    this.lean = player.lean;
    this.bow = new ElbowBow(this);
    this.parts = [
      { name: 'stick', at: BUTT, radius: player.stick.diameter / 2 },
      { name: 'hand', at: GRIP, radius: HAND_RADIUS },
      { name: 'forearm', at: ELBOW, radius: FOREARM_RADIUS },
    ];
  }

  /** How far a grip is beyond what arm and lean reach, mm (rule A2); 0 when it is in reach. */
  beyond(x: Mm, y: Mm, z: Mm): Mm {
    const far = Math.hypot(x - this.shoulderX, y, z - this.shoulderZ);
    return Math.max(0, far - this.easy - this.lean);
  }

  /**
   * Writes the elbow that belongs to the grip of the position at out[at] (rules A2 and A3). The arm solves as a triangle of its two links over
   * the line from the shoulder, moved by the trunk's lean; beyond all reach the triangle stays as at full stretch.
   */
  writeElbow(out: Float64Array, at: number): void {
    let ex = (out[at + GRIP] as number) - this.shoulderX;
    let ey = out[at + GRIP + 1] as number;
    let ez = (out[at + GRIP + 2] as number) - this.shoulderZ;
    const far = Math.sqrt(ex * ex + ey * ey + ez * ez);
    const size = far > NO_SIDE ? far : 1;
    ex /= size;
    ey /= size;
    ez /= size;
    const lean = Math.min(this.lean, Math.max(0, far - this.easy));
    const line = Math.max(Math.abs(this.upper - this.fore), Math.min(far - lean, this.easy));
    const base = elbowFoot(this.upper, this.fore, line);
    const height = Math.sqrt(Math.max(0, this.upper * this.upper - base * base));
    // The hang direction less its part along the arm: outward and down, square to the line from shoulder to grip.
    const slope = HANG_X * ex + HANG_Z * ez;
    let wx = HANG_X - slope * ex;
    let wy = -slope * ey;
    let wz = HANG_Z - slope * ez;
    const wide = Math.sqrt(wx * wx + wy * wy + wz * wz);
    if (wide < NO_SIDE) {
      wx = -ez;
      wy = 0;
      wz = ex;
    }
    const k = height / (wide < NO_SIDE ? Math.hypot(ex, ez) : wide);
    out[at + ELBOW] = this.shoulderX + (lean + base) * ex + k * wx;
    out[at + ELBOW + 1] = (lean + base) * ey + k * wy;
    out[at + ELBOW + 2] = this.shoulderZ + (lean + base) * ez + k * wz;
  }

  /**
   * How far the elbow can be from the straight line between its places in two positions, at out[from] and out[to], while the grip goes from one to
   * the other.
   */
  elbowBow(out: Float64Array, from: number, to: number, way: GripWay): Mm {
    const bow = this.bow.between(out, from + GRIP, to + GRIP, way);
    return bow <= SMALL_BOW * way.room ? bow : Math.min(bow, this.elbowRoom(out, from, way.room));
  }

  /**
   * How far the elbow can be from the nearer of its places at the two ends of a way of the grip that starts with the position at out[at]
   * and is at most `room` mm long: the bound that lets the search skip intervals without missing a touch.
   *
   * Derivation. e is the unit vector from shoulder to grip, D their distance (at least Dmin), turning at most 1/Dmin per mm. The elbow
   * stands b along e and a to its side, on a sphere about the shoulder; A is the triangle's angle there.
   * - Rate: in the plane of e and the hang direction it turns with e and by the change of A, |b'|/a per mm, on the upper arm's length;
   *   out of that plane by the upper arm's length over Dmin sin g, g the angle between e and the hang direction. When leaning, D is
   *   held, and the shoulder itself moves at most as fast as the grip.
   * - Range: where the arm folds flat, a goes to 0 and A has no rate; but it stays between its values at the ends of D's range.
   * - Circle: where g may be 0 the elbow may go round e at any rate, but never farther than 2 a, while its foot on e moves at most
   *   by b' per mm (a folded arm's, which only turns with e, by b/Dmin).
   */
  elbowRoom(out: Float64Array, at: number, room: Mm): Mm {
    const { upper, fore, easy } = this;
    const x = (out[at + GRIP] as number) - this.shoulderX;
    const y = out[at + GRIP + 1] as number;
    const z = (out[at + GRIP + 2] as number) - this.shoulderZ;
    const far = Math.sqrt(x * x + y * y + z * z);
    const nearest = far - room;
    if (nearest <= 0) return 2 * upper + room;
    const shortest = Math.abs(upper - fore);
    const low = Math.max(shortest, Math.min(nearest, easy));
    const high = Math.max(shortest, Math.min(far + room, easy));
    const heightLow = this.elbowHeight(low);
    const leastHeight = Math.min(heightLow, this.elbowHeight(high));
    const unequal = shortest * (upper + fore);
    const footRate = 0.5 + unequal / (2 * low * low);
    const leaning = far + room > easy ? 1 : 0;
    // The triangle's height over its base rises to its most, the upper arm, and falls from there on.
    const mostHeight = low * low >= unequal ? heightLow : upper;
    const footTurn = nearest < shortest ? upper / nearest : 0;
    const foot = ((leaning + Math.max(footRate, footTurn)) * room) / 2;
    const circle = Math.min(2 * upper + room, foot + 2 * mostHeight);
    const cosHang = (HANG_X * x + HANG_Z * z) / (far * HANG_SIZE);
    const sinHang = Math.sqrt(Math.max(0, 1 - cosHang * cosHang)) - room / nearest;
    if (sinHang <= 0) return circle;
    const turnRate = upper / (sinHang * nearest);
    if (leastHeight < FLAT * upper) {
      const range = upper * this.foldRange(low, high);
      return Math.min(((leaning + turnRate) * room) / 2 + range, circle);
    }
    const inPlane = upper * (1 / nearest + footRate / leastHeight);
    const rate = leaning + Math.sqrt(inPlane * inPlane + turnRate * turnRate);
    return Math.min((rate * room) / 2, circle);
  }

  /** How much the triangle's angle at the shoulder can differ while its base is between `low` and `high`. */
  private foldRange(low: Mm, high: Mm): number {
    const { upper, fore } = this;
    const angle = (line: Mm): number =>
      Math.acos(Math.max(-1, Math.min(1, elbowFoot(upper, fore, line) / upper)));
    const first = angle(low);
    const last = angle(high);
    const peak = Math.sqrt(Math.max(0, upper * upper - fore * fore));
    const most = low < peak && peak < high ? Math.asin(fore / upper) : Math.max(first, last);
    return most - Math.min(first, last);
  }

  private elbowHeight(line: Mm): Mm {
    const base = elbowFoot(this.upper, this.fore, line);
    return Math.sqrt(Math.max(0, this.upper * this.upper - base * base));
  }
}
