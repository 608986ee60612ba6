import type { Mm } from '../units/quantity.ts';
import { type ArmLinks, elbowFoot, HANG_X, HANG_Z } from './armLinks.ts';

/** How a grip goes in a stretch of time of length dt: at most `room` mm far, with a second derivative of at most `bend` / dt^2. */
export interface GripWay {
  readonly room: Mm;
  readonly bend: Mm;
}

/** A quantity with its first and second derivative: the most that their amounts can be in the stretch, in its own time. */
interface Most {
  value: number;
  rate: number;
  bend: number;
}

/**
 * How far an elbow can be from the straight way between its places at the two ends of a stretch of time (rules A2 and A3).
 *
 * Derivation. A point whose second derivative is at most b keeps within b dt^2 / 8 of the straight way. Time is counted in the stretch, dt = 1.
 * e is the unit vector from shoulder to grip, D their distance, w the unit vector square to e toward which the elbow hangs, n = e x w,
 * g the angle between e and the hang direction. The frame turns as e' = a w + c n, w' = -a e + r n, n' = -c e - r w with r = -c cot g and g' = -a.
 * The grip's second derivative gives e'' = a part along e, alpha w + beta n, where a' = alpha + c r and c' = beta - a r.
 * With the elbow at B e + H w from the shoulder (B its foot on the line, H the triangle's height) its second derivative is
 * - along e: B'' - 2 H' a - H alpha - 2 H c r - B (a^2 + c^2)
 * - along w: H'' + 2 B' a + B alpha - H (a^2 + r^2)
 * - along n: 2 c (B' - H' cot g) + beta (B - H cot g) - 2 H a c / sin^2 g.
 * Leaning, D is held and the shoulder moves along e: the elbow is then the grip less (D - B) e, and H w. Where the trunk begins or ceases to lean
 * its velocity jumps, once when D only grows or only shrinks, and a jump by j bends the way by at most j / 4.
 */
export class ElbowBow {
  private readonly links: ArmLinks;
  /** The most that e turns, and the most of its second derivative square to it. */
  private turn = 0;
  private turnBend = 0;
  /** Least sine of g and most of its cotangent's amount. */
  private sin = 0;
  private cot = 0;
  /** Of the distance between shoulder and grip: least and most, and how it changes. */
  private nearest: Mm = 0;
  private farthest: Mm = 0;
  private radial: Mm = 0;
  private radialBend: Mm = 0;
  private readonly foot: Most = { value: 0, rate: 0, bend: 0 };
  private readonly height: Most = { value: 0, rate: 0, bend: 0 };

  constructor(links: ArmLinks) {
    this.links = links;
  }

  /** For a way of the grip between the points at p[from] and p[to]; infinite where this derivation gives no bound. Mm. */
  between(p: Float64Array, from: number, to: number, way: GripWay): Mm {
    const { easy, lean } = this.links;
    const held = easy + lean;
    if (!this.takeWay(p, from, to, way)) return Number.POSITIVE_INFINITY;
    const { nearest, farthest } = this;
    let bend = 0;
    let jump = 0;
    if (nearest < easy) {
      bend = this.freeBend(nearest, Math.min(farthest, easy));
      if (farthest > easy) jump = this.jumpAtEase();
    }
    if (farthest > easy && nearest < held) bend = Math.max(bend, way.bend + this.heldBend(-easy));
    if (farthest > held) {
      bend = Math.max(bend, this.heldBend(lean));
      if (nearest < held) jump += this.radial;
    }
    return bend / 8 + jump / 4;
  }

  /** Takes what is common to all of the way; false where the arm may pass its shoulder or the line along which its elbow hangs. */
  private takeWay(p: Float64Array, from: number, to: number, { room, bend }: GripWay): boolean {
    const { shoulderX, shoulderZ, easy, lean } = this.links;
    const x0 = (p[from] as number) - shoulderX;
    const y0 = p[from + 1] as number;
    const z0 = (p[from + 2] as number) - shoulderZ;
    const x1 = (p[to] as number) - shoulderX;
    const y1 = p[to + 1] as number;
    const z1 = (p[to + 2] as number) - shoulderZ;
    const far0 = Math.sqrt(x0 * x0 + y0 * y0 + z0 * z0);
    const far1 = Math.sqrt(x1 * x1 + y1 * y1 + z1 * z1);
    const straight = Math.sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2 + (z1 - z0) ** 2);
    // A velocity differs from its mean over the stretch by at most half the second derivative.
    const speed = Math.min(room, straight + bend / 2);
    const least = (far0 + far1 - speed) / 2;
    if (least <= 0) return false;
    // D'' is the grip's second derivative along e and D times the turn of e squared.
    this.radialBend = bend + (speed * speed) / least;
    this.nearest = Math.max(least, Math.min(far0, far1) - this.radialBend / 8);
    this.farthest = Math.max(far0, far1) + bend / 8;
    const across = Math.abs(far1 - far0);
    this.radial = Math.min(speed, across + this.radialBend / 2);
    this.turn = speed / this.nearest;
    this.turnBend =
      bend / this.nearest + this.turn * Math.min(this.turn, (2 * this.radial) / this.nearest);
    this.sin = (sinHang(x0, z0, far0) + sinHang(x1, z1, far1) - this.turn) / 2;
    if (!(this.sin > 0)) return false;
    this.cot = Math.sqrt(Math.max(0, 1 / (this.sin * this.sin) - 1));
    const crosses = (at: Mm): boolean => this.nearest < at && at < this.farthest;
    return across > this.radialBend / 2 || !(crosses(easy) || crosses(easy + lean));
  }

  /** While the elbow bends freely, with D between `low` and `high`. */
  private freeBend(low: Mm, high: Mm): Mm {
    const { foot, height, radial, radialBend } = this;
    const { upper, fore } = this.links;
    const unequal = (upper - fore) * (upper + fore);
    const atLow = Math.abs(elbowFoot(upper, fore, low));
    const atHigh = Math.abs(elbowFoot(upper, fore, high));
    foot.value = Math.max(atLow, atHigh);
    const least = Math.sqrt(upper * upper - foot.value * foot.value);
    if (!(least > 0) || low < Math.abs(upper - fore)) return Number.POSITIVE_INFINITY;
    // The triangle's height over its base rises to its most, at most the upper arm, and falls from there on.
    const past = low * low < Math.abs(unequal) && Math.abs(unequal) < high * high;
    const lower = Math.min(atLow, atHigh);
    height.value = past ? upper : Math.sqrt(upper * upper - lower * lower);
    const slope = Math.max(footSlope(unequal, low), footSlope(unequal, high));
    const slopeBend = Math.abs(unequal) / (low * low * low);
    const steep = (foot.value * slope) / least;
    const steepBend = (slope * slope + foot.value * slopeBend + steep * steep) / least;
    foot.rate = slope * radial;
    height.rate = steep * radial;
    foot.bend = slopeBend * radial * radial + slope * radialBend;
    height.bend = steepBend * radial * radial + steep * radialBend;
    return this.bend();
  }

  /** While D is held at its most: the foot stays `beyond` the triangle's own along e. */
  private heldBend(beyond: Mm): Mm {
    const { upper, fore, easy } = this.links;
    const { foot, height } = this;
    const own = elbowFoot(upper, fore, easy);
    foot.value = Math.abs(own + beyond);
    height.value = Math.sqrt(Math.max(0, upper * upper - own * own));
    foot.rate = 0;
    foot.bend = 0;
    height.rate = 0;
    height.bend = 0;
    return this.bend();
  }

  /** How much the elbow's velocity jumps where the trunk begins to lean. */
  private jumpAtEase(): Mm {
    const { upper, fore, easy } = this.links;
    const own = elbowFoot(upper, fore, easy);
    const slope = 0.5 - ((upper - fore) * (upper + fore)) / (2 * easy * easy);
    const steep = (own * slope) / Math.sqrt(upper * upper - own * own);
    return this.radial * Math.sqrt((1 - slope) ** 2 + steep ** 2);
  }

  /** The most of the elbow's second derivative, from what is known of foot, height and frame. */
  private bend(): Mm {
    const { foot, height, turn, turnBend, sin, cot } = this;
    const turns = turn * turn;
    const alongE =
      foot.bend +
      2 * height.rate * turn +
      height.value * (turnBend + 2 * cot * turns) +
      foot.value * turns;
    const alongW =
      height.bend +
      2 * foot.rate * turn +
      foot.value * turnBend +
      height.value * turns * Math.max(1, cot * cot);
    const alongN =
      2 * turn * (foot.rate + height.rate * cot) +
      turnBend * (foot.value + height.value * cot) +
      (height.value * turns) / (sin * sin);
    return Math.sqrt(alongE * alongE + alongW * alongW + alongN * alongN);
  }
}

/** Amount of the foot's change with D. */
const footSlope = (unequal: number, line: Mm): number =>
  Math.abs(0.5 - unequal / (2 * line * line));

/** Sine of the angle between the direction (x, y, z) of size `far` and the hang direction. */
function sinHang(x: Mm, z: Mm, far: Mm): number {
  const cos = (HANG_X * x + HANG_Z * z) / far;
  return Math.sqrt(Math.max(0, 1 - (cos * cos) / (HANG_X * HANG_X + HANG_Z * HANG_Z)));
}
