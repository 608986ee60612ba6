import type { Capsule } from '../../src/geometry/capsule.ts';
import { along, distance, dot, subtract, type Vec3 } from '../../src/geometry/vector.ts';
import type { Player } from '../../src/layout/player.ts';
import type { OracleMotion, OracleMove, OracleSwing } from './motionOracle.ts';
import { segmentsApart } from './segmentsOracle.ts';

/**
 * The least distance between a mic and everything that moves, by dense sampling: every move at even steps, then finer about the
 * best samples. An upper bound on the exact minimum, and near it. Bounding balls leave out only what can't be nearer.
 */
export interface SampledMotion {
  readonly motion: OracleMotion;
  readonly sampled: readonly SampledMove[];
  readonly stickRadius: number;
}

interface SampledMove {
  readonly move: OracleMove;
  /** Twelve numbers a sample: elbow, grip, butt, tip. */
  readonly rows: Float64Array;
  /** The farthest any of these points gets from one sample to the next. */
  readonly stride: number;
  /** A ball round all samples of all parts. */
  readonly centre: Vec3;
  readonly radius: number;
}

const ROW = 12;
const [ELBOW, GRIP, BUTT, TIP] = [0, 3, 6, 9];
const HAND_RADIUS = 45;
const FOREARM_RADIUS = 40;
const THIGH_RADIUS = 75;
const SHIN_RADIUS = 55;
const SWING = Math.PI / 9;

/** Samples all moves at `steps` + 1 even times. */
export function sampleMotion(motion: OracleMotion, player: Player, steps: number): SampledMotion {
  return {
    motion,
    sampled: motion.moves.map((move) => sampleMove(move, steps)),
    stickRadius: player.stick.diameter / 2,
  };
}

function writeRow(move: OracleMove, t: number, rows: Float64Array, at: number): void {
  const { elbow, grip, butt, tip } = move.at(t);
  let i = at;
  for (const { x, y, z } of [elbow, grip, butt, tip]) {
    rows[i++] = x;
    rows[i++] = y;
    rows[i++] = z;
  }
}

function sampleMove(move: OracleMove, steps: number): SampledMove {
  const rows = new Float64Array((steps + 1) * ROW);
  for (let k = 0; k <= steps; k++) writeRow(move, k / steps, rows, k * ROW);
  const point = (i: number): Vec3 => ({
    x: rows[i] ?? 0,
    y: rows[i + 1] ?? 0,
    z: rows[i + 2] ?? 0,
  });
  let stride = 0;
  for (let i = ROW; i < rows.length; i += 3) {
    stride = Math.max(stride, distance(point(i), point(i - ROW)));
  }
  const centre = point(Math.floor(steps / 2) * ROW + GRIP);
  let radius = 0;
  for (let i = 0; i < rows.length; i += 3) radius = Math.max(radius, distance(point(i), centre));
  return { move, rows, stride, centre, radius: radius + HAND_RADIUS };
}

/** A moving part as the two places in a row between which its axis runs. */
interface Part {
  readonly from: number;
  readonly to: number;
  readonly radius: number;
}

/** A sample that may be near the least distance. */
interface Candidate {
  readonly sampled: SampledMove;
  readonly part: Part;
  readonly solid: Float64Array;
  readonly step: number;
  readonly clearance: number;
}

/** A solid as a row: both ends of its axis and its radius. */
const solidRow = ({ a, b, radius }: Capsule): Float64Array =>
  Float64Array.of(a.x, a.y, a.z, b.x, b.y, b.z, radius);

/** Least distance between capsules and all that moves, negative where they overlap (by radii, between the axes). */
export function sampledClearance(scene: SampledMotion, solids: readonly Capsule[]): number {
  const best = Math.min(...legDistances(scene.motion, solids), ...swingDistances(scene, solids));
  return Math.min(best, movesDistance(scene, solids, best));
}

const legDistances = ({ legs }: OracleMotion, solids: readonly Capsule[]): number[] =>
  legs.flatMap(({ hip, knee, ankle }) =>
    solids.flatMap(({ a, b, radius }) => [
      gap([a, b], [hip, knee]) - radius - THIGH_RADIUS,
      gap([a, b], [knee, ankle]) - radius - SHIN_RADIUS,
    ]),
  );

const gap = ([a, b]: readonly [Vec3, Vec3], [c, d]: readonly [Vec3, Vec3]): number =>
  segmentsApart(Float64Array.of(a.x, a.y, a.z, b.x, b.y, b.z), 0, {
    rows: Float64Array.of(c.x, c.y, c.z, d.x, d.y, d.z),
    from: 0,
    to: 3,
  });

function movesDistance(scene: SampledMotion, solids: readonly Capsule[], limit: number): number {
  const parts: readonly Part[] = [
    { from: BUTT, to: TIP, radius: scene.stickRadius },
    { from: GRIP, to: GRIP, radius: HAND_RADIUS },
    { from: ELBOW, to: GRIP, radius: FOREARM_RADIUS },
  ];
  let best = limit;
  let kept: Candidate[] = [];
  for (const { a, b, radius } of solids) {
    const middle = along(a, subtract(b, a), 0.5);
    const half = distance(a, b) / 2 + radius;
    const solid = solidRow({ a, b, radius });
    for (const sampled of scene.sampled) {
      const { centre, stride } = sampled;
      if (distance(centre, middle) - half - sampled.radius > best + stride) continue;
      for (const part of parts) {
        const found = sampleDips(sampled, part, solid, best + stride);
        for (const one of found) best = Math.min(best, one.clearance);
        kept.push(...found);
      }
    }
    kept = kept.filter(({ clearance, sampled }) => clearance <= best + sampled.stride);
  }
  for (const candidate of kept.toSorted((p, q) => p.clearance - q.clearance)) {
    if (candidate.clearance <= best + candidate.sampled.stride) {
      best = Math.min(best, refined(candidate));
    }
  }
  return best;
}

/** All samples below the limit that are not above their neighbours. */
function sampleDips(
  sampled: SampledMove,
  part: Part,
  solid: Float64Array,
  limit: number,
): Candidate[] {
  const { rows, stride } = sampled;
  const count = rows.length / ROW;
  const radii = part.radius + (solid[6] ?? 0);
  const clearances = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const found: Candidate[] = [];
  for (let step = 0; step < count; step++) {
    const at = { rows, from: step * ROW + part.from, to: step * ROW + part.to };
    const clearance = segmentsApart(solid, 0, at) - radii;
    clearances[step] = clearance;
    // No point moves farther than the stride in a step: as long as the limit is that far off, the next ones are above it too.
    if (clearance > limit + stride)
      step += Math.min(count, Math.floor((clearance - limit) / (stride + 1e-9)) - 1);
  }
  for (const [step, clearance] of clearances.entries()) {
    const before = clearances[step - 1] ?? Number.POSITIVE_INFINITY;
    const after = clearances[step + 1] ?? Number.POSITIVE_INFINITY;
    if (clearance <= limit && clearance <= before && clearance <= after) {
      found.push({ sampled, part, solid, step, clearance });
    }
  }
  return found;
}

/** The least distance between a sample's neighbours, by golden section. */
function refined({ sampled, part, solid, step }: Candidate): number {
  const steps = sampled.rows.length / ROW - 1;
  const row = new Float64Array(ROW);
  const place = { rows: row, from: part.from, to: part.to };
  const radii = part.radius + (solid[6] ?? 0);
  return leastBetween(Math.max(0, step - 1) / steps, Math.min(steps, step + 1) / steps, (t) => {
    writeRow(sampled.move, t, row, 0);
    return segmentsApart(solid, 0, place) - radii;
  });
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

function leastBetween(low: number, high: number, f: (t: number) => number): number {
  let [a, b] = [low, high];
  let best = Math.min(f(a), f(b));
  let [p, q] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [fp, fq] = [f(p), f(q)];
  for (let round = 0; round < 24; round++) {
    best = Math.min(best, fp, fq);
    if (fp < fq) {
      [b, q, fq] = [q, p, fp];
      p = b - GOLDEN * (b - a);
      fp = f(p);
    } else {
      [a, p, fp] = [p, q, fq];
      q = a + GOLDEN * (b - a);
      fq = f(q);
    }
  }
  return best;
}

/** Distance from a point to what a swinging cymbal sweeps, negative inside: a sector in the half plane through its normal. */
export function swingDistance(swing: OracleSwing, point: Vec3): number {
  const from = subtract(point, swing.centre);
  const lift = Math.abs(dot(from, swing.normal));
  const out = Math.hypot(
    from.x - dot(from, swing.normal) * swing.normal.x,
    from.y - dot(from, swing.normal) * swing.normal.y,
    from.z - dot(from, swing.normal) * swing.normal.z,
  );
  const angle = Math.atan2(lift, out);
  const size = Math.hypot(lift, out);
  const onArc = Math.min(angle, SWING);
  const toArc = Math.hypot(
    out - swing.radius * Math.cos(onArc),
    lift - swing.radius * Math.sin(onArc),
  );
  const edge = (sign: number): number => {
    const [ex, ey] = [Math.cos(SWING), sign * Math.sin(SWING)];
    const k = Math.min(swing.radius, Math.max(0, out * ex + lift * ey));
    return Math.hypot(out - k * ex, lift - k * ey);
  };
  const toBoundary = Math.min(toArc, edge(1), edge(-1));
  return angle <= SWING && size <= swing.radius ? -toBoundary : toBoundary;
}

/** Steps along a solid's axis at most this long, mm. */
const SWING_STEP = 4;

function swingDistances(scene: SampledMotion, solids: readonly Capsule[]): number[] {
  return scene.motion.swings.flatMap((swing) =>
    solids.map(({ a, b, radius }) => {
      const f = (t: number): number => swingDistance(swing, along(a, subtract(b, a), t)) - radius;
      const steps = Math.max(1, Math.ceil(distance(a, b) / SWING_STEP));
      const values = Array.from({ length: steps + 1 }, (_, k) => f(k / steps));
      const least = Math.min(...values);
      const dips = values.flatMap((value, k) => (value <= least + SWING_STEP ? [k] : []));
      return Math.min(
        least,
        ...dips
          .filter(
            (k) =>
              (values[k] ?? 0) <= Math.min(values[k - 1] ?? Infinity, values[k + 1] ?? Infinity),
          )
          .map((k) => leastBetween(Math.max(0, k - 1) / steps, Math.min(steps, k + 1) / steps, f)),
      );
    }),
  );
}
