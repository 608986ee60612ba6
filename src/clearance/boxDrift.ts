import type { Vec3 } from '../geometry/vector.ts';
import type { MicSolid } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import type { ClearSpotFamily, Leeway, Spot } from './clearSpotFamily.ts';
import type { Drift } from './question.ts';

/** The middle of a box of spots, and how far its values go either way. */
export interface DriftBox {
  readonly family: ClearSpotFamily;
  readonly values: readonly number[];
  readonly halves: readonly number[];
  readonly spot: Spot;
  /** As of the box's leeway. */
  readonly bends: readonly (readonly Mm[])[];
}

/**
 * How far the solids of a mic move in one direction over a box of spots: the sum of what each value does when it goes to the ends of its range alone,
 * and the bend of the leeway. The spots at those ends are placed when they are first asked for.
 */
export class BoxDrift {
  /** What each value did to the last point asked for, mm; and to the one kept. */
  private readonly parts: Mm[];
  private kept: readonly Mm[];
  private keptBound: Mm = Number.POSITIVE_INFINITY;
  private keptAside = 0;
  private keptAt: readonly [number, number] = [0, 0];
  private at: readonly [number, number] = [0, 0];
  private readonly box: DriftBox;
  private ends: readonly (readonly [Spot, Spot])[] | null | undefined;

  constructor(box: DriftBox) {
    this.box = box;
    this.parts = box.values.map(() => 0);
    this.kept = box.values.map(() => 0);
  }

  /** That of one group of solids. */
  ofGroup(group: number): Drift {
    return {
      along: (solid, s, way) => this.along([group, solid], s, way),
      bounded: (bound, aside) => {
        if (bound < this.keptBound) this.keep(bound, aside);
      },
    };
  }

  /**
   * How much a value has to do with what is nearest to ruling out the whole box, mm, given the leeway that it has alone; undefined when nothing is near
   * to that.
   */
  share(k: number, { rooms, bends }: Pick<Leeway, 'rooms' | 'bends'>): Mm | undefined {
    if (this.keptBound === Number.POSITIVE_INFINITY) return undefined;
    const [group, solid] = this.keptAt;
    const aside = this.keptAside * (rooms[group]?.[solid] ?? 0);
    return (this.kept[k] ?? 0) + aside + (bends[group]?.[solid] ?? 0);
  }

  /** What is nearest to ruling out the whole box is kept. */
  private keep(bound: Mm, aside: number): void {
    this.keptBound = bound;
    this.keptAside = aside;
    this.keptAt = this.at;
    this.kept = [...this.parts];
  }

  private along(at: readonly [number, number], s: number, way: Vec3): Mm {
    this.at = at;
    const [group, solid] = at;
    const bend = this.box.bends[group]?.[solid] ?? Number.POSITIVE_INFINITY;
    this.ends ??= this.placeEnds();
    const here = this.box.spot.groups[group]?.[solid];
    if (this.ends === null || !here) return Number.POSITIVE_INFINITY;
    const from = placeAlong(here, s, way);
    let sum = bend;
    for (const [k, [low, high]] of this.ends.entries()) {
      const a = low.groups[group]?.[solid];
      const b = high.groups[group]?.[solid];
      if (!a || !b) return Number.POSITIVE_INFINITY;
      const most = Math.max(0, placeAlong(a, s, way) - from, placeAlong(b, s, way) - from);
      this.parts[k] = most;
      sum += most;
    }
    return sum;
  }

  /** Per value the spots at both ends of its range; null where one of them is none. */
  private placeEnds(): readonly (readonly [Spot, Spot])[] | null {
    const { family, values, halves } = this.box;
    const ends: (readonly [Spot, Spot])[] = [];
    for (const [k, value] of values.entries()) {
      const half = halves[k] ?? 0;
      const low = family.spotAt(values.with(k, value - half));
      const high = family.spotAt(values.with(k, value + half));
      if (!low || !high) return null;
      ends.push([low, high]);
    }
    return ends;
  }
}

/** How far the point at s of a solid's axis lies along a unit vector. */
function placeAlong({ capsule: { a, b } }: MicSolid, s: number, { x, y, z }: Vec3): Mm {
  const from = a.x * x + a.y * y + a.z * z;
  return from + s * (b.x * x + b.y * y + b.z * z - from);
}
