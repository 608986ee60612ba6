import { cross, distance, length, subtract, type Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';
import { type Arm, GRIP } from './arm.ts';
import type { Side } from './hands.ts';
import { type Move, type PointBounds, pointBounds, writeStick } from './move.ts';
import { cosBetween, type Raised, raisedTo, type Strike } from './strike.ts';

/** Rule M2: a hand leaves a piece from half a stroke and comes to the next at full height. */
const LEAVES_AT = 0.5;
const ARRIVES_AT = 1;
/** Rule M4: the hop over a straight change of height is a fifth of the way, at most 100 mm. */
const hopOver = (from: Vec3, to: Vec3): Mm => Math.min(100, 0.2 * distance(from, to));
/** Sticks this nearly opposite have no direction between them; they keep the first one's (rule M5, its limit case). */
const OPPOSITE = 1e-12;

/** A hand at the end of a travel: its grip, also as radius and azimuth about the axis through the shoulder, and its stick's direction. */
export interface TravelEnd {
  readonly piece: Id;
  readonly grip: Vec3;
  readonly stick: Vec3;
  readonly radius: Mm;
  readonly azimuth: number;
}

function travelEnd(piece: Id, { grip, stick }: Raised, { shoulderX }: Arm): TravelEnd {
  const aside = grip.x - shoulderX;
  const radius = Math.sqrt(aside * aside + grip.y * grip.y);
  return { piece, grip, stick, radius, azimuth: Math.atan2(grip.y, aside) };
}

/** Where a hand leaves a piece. */
export const leaving = (piece: Id, strike: Strike, arm: Arm): TravelEnd =>
  travelEnd(piece, raisedTo(strike, LEAVES_AT), arm);

/** Where it comes to the next. */
export const arriving = (piece: Id, strike: Strike, arm: Arm): TravelEnd =>
  travelEnd(piece, raisedTo(strike, ARRIVES_AT), arm);

/** Where a hand starts and where it goes. */
export interface Way {
  readonly from: TravelEnd;
  readonly to: TravelEnd;
}

/**
 * Rules M2 to M5: the travel of one hand between two pieces. The grip moves in cylindrical coordinates about the vertical axis
 * through the shoulder: radius and azimuth (the short way round) evenly, height evenly plus a hop; the stick's direction
 * is the normalised blend of the two.
 */
export class Travel implements Move {
  readonly speed: PointBounds;
  readonly bend: PointBounds;
  readonly side: Side;
  readonly on: Id;
  readonly from: Id;
  private readonly arm: Arm;
  private readonly radius: Mm;
  private readonly radiusGrows: Mm;
  private readonly azimuth: number;
  private readonly azimuthTurns: number;
  private readonly height: Mm;
  private readonly heightGrows: Mm;
  private readonly hop: Mm;
  private readonly stick: Vec3;
  private readonly stickChange: Vec3;

  constructor(side: Side, { from, to }: Way, arm: Arm) {
    this.side = side;
    this.from = from.piece;
    this.on = to.piece;
    this.arm = arm;
    this.radius = from.radius;
    this.radiusGrows = to.radius - from.radius;
    this.azimuth = from.azimuth;
    this.azimuthTurns = shortWay(to.azimuth - from.azimuth);
    this.height = from.grip.z;
    this.heightGrows = to.grip.z - from.grip.z;
    this.hop = hopOver(from.grip, to.grip);
    this.stick = from.stick;
    this.stickChange = subtract(to.stick, from.stick);
    const grip = this.gripBounds();
    const turn = turnBounds(from.stick, to.stick);
    this.speed = pointBounds(grip.speed, turn.speed, arm);
    this.bend = pointBounds(grip.bend, turn.bend, arm);
  }

  write(t: number, out: Float64Array, at: number): void {
    const r = this.radius + t * this.radiusGrows;
    const azimuth = this.azimuth + t * this.azimuthTurns;
    out[at + GRIP] = this.arm.shoulderX + r * Math.cos(azimuth);
    out[at + GRIP + 1] = r * Math.sin(azimuth);
    out[at + GRIP + 2] = this.height + t * this.heightGrows + 4 * this.hop * t * (1 - t);
    const x = this.stick.x + t * this.stickChange.x;
    const y = this.stick.y + t * this.stickChange.y;
    const z = this.stick.z + t * this.stickChange.z;
    const size = Math.sqrt(x * x + y * y + z * z);
    const direction = size < OPPOSITE ? this.stick : { x: x / size, y: y / size, z: z / size };
    writeStick(out, at, direction, this.arm);
  }

  /** Cylindrical motion with even rates: outward and around for the speed, inward pull and sideways push for the bend. */
  private gripBounds(): { readonly speed: number; readonly bend: number } {
    const widest = Math.max(this.radius, this.radius + this.radiusGrows);
    const rises = Math.abs(this.heightGrows) + 4 * this.hop;
    return {
      speed: sizeOf(this.radiusGrows, widest * this.azimuthTurns, rises),
      bend: sizeOf(
        widest * this.azimuthTurns ** 2,
        2 * this.radiusGrows * this.azimuthTurns,
        8 * this.hop,
      ),
    };
  }
}

/** As Math.hypot, less its care for numbers far larger or smaller than these. */
const sizeOf = (x: number, y: number, z: number): number => Math.sqrt(x * x + y * y + z * z);

/**
 * Bounds of the blended stick direction w/|w|, w = (1 - t) p + t q: it turns at |p x q| / |w|^2, fastest half way, and that rate
 * itself changes at most by 2 |p x q| |q - p| / |w|^3.
 */
function turnBounds(p: Vec3, q: Vec3): { readonly speed: number; readonly bend: number } {
  const least = Math.sqrt((1 + cosBetween(p, q)) / 2);
  if (least < 1e-6) return { speed: Number.POSITIVE_INFINITY, bend: Number.POSITIVE_INFINITY };
  const wedge = length(cross(p, q));
  const speed = wedge / (least * least);
  return { speed, bend: sizeOf(speed * speed, (2 * wedge * distance(p, q)) / least ** 3, 0) };
}

/** A turn brought into (-pi, pi]. */
function shortWay(turn: number): number {
  if (turn > Math.PI) return turn - 2 * Math.PI;
  return turn <= -Math.PI ? turn + 2 * Math.PI : turn;
}
