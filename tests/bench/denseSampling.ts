import { swingsOf } from '../../src/clearance/swing.ts';
import { rockingDiscDistance } from '../../src/geometry/rockingDisc.ts';
import { capsuleDistance, SegmentGap } from '../../src/geometry/segments.ts';
import { along, distance, subtract } from '../../src/geometry/vector.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { type Arm, ELBOW, POSITION } from '../../src/player/arm.ts';
import { legsOf } from '../../src/player/legs.ts';
import type { Move } from '../../src/player/move.ts';
import { playingOf } from '../../src/player/moves.ts';
import type { MicSolid, PlacedMic } from '../../src/rig/placed.ts';

/** What sampling may be above the exact minimum, mm. */
const ACCURACY = 1;
/** Even steps over which the elbow's speed is measured, and what is added for what lies between them. */
const ELBOW_STEPS = 200;
const ELBOW_MARGIN = 1.1;

interface SampledMove {
  readonly move: Move;
  /** Positions at even times, `POSITION` numbers each. */
  readonly positions: Float64Array;
  readonly count: number;
}

/**
 * The baseline: every move at even times, every solid against every part at each of them. The step of a move is the longest for
 * which sampling is within 1 mm: a distance changes at most as fast as the fastest point of the arm, and no moment is farther than half
 * a step from a sample, so step = 2 mm / fastest point. Speeds are the moves' own bounds, the elbow's is measured.
 */
export interface DenseSampling {
  readonly arm: Arm;
  readonly moves: readonly SampledMove[];
  readonly layout: Pick<Layout, 'player' | 'pieces'>;
  readonly samples: number;
}

export function denseSampling(layout: Pick<Layout, 'player' | 'pieces'>): DenseSampling {
  const { arm, moves } = playingOf(layout.player, layout.pieces);
  const sampled = moves.map((move): SampledMove => {
    const { butt, grip, tip } = move.speed;
    const fastest = Math.max(butt, grip, tip, elbowSpeed(move));
    const count = Math.ceil(fastest / (2 * ACCURACY)) + 1;
    const positions = new Float64Array(count * POSITION);
    for (let k = 0; k < count; k++) move.write(k / (count - 1), positions, k * POSITION);
    return { move, positions, count };
  });
  const samples = sampled.reduce((sum, { count }) => sum + count, 0);
  return { arm, moves: sampled, layout, samples };
}

/** Fastest mean speed of the elbow over a short time, mm per unit of t. */
function elbowSpeed(move: Move): number {
  const [here, next] = [new Float64Array(POSITION), new Float64Array(POSITION)];
  let fastest = 0;
  for (let k = 0; k < ELBOW_STEPS; k++) {
    move.write(k / ELBOW_STEPS, here, 0);
    move.write((k + 1) / ELBOW_STEPS, next, 0);
    const gone = [0, 1, 2].map((axis) => (next[ELBOW + axis] ?? 0) - (here[ELBOW + axis] ?? 0));
    fastest = Math.max(fastest, Math.hypot(...gone) * ELBOW_STEPS);
  }
  return fastest * ELBOW_MARGIN;
}

/** Least clearance of a mic over all samples, legs and swings, mm. */
export function sampleMic(dense: DenseSampling, { solids }: Pick<PlacedMic, 'solids'>): number {
  const { player, pieces } = dense.layout;
  const legs = legsOf(player, pieces).flatMap(({ thigh, shin }) => [thigh, shin]);
  return Math.min(
    sampleMoves(dense, solids),
    ...sampleSwings(dense.layout, solids),
    ...legs.flatMap((leg) => solids.map(({ capsule }) => capsuleDistance(capsule, leg))),
  );
}

function sampleMoves({ arm, moves }: DenseSampling, solids: readonly MicSolid[]): number {
  const gap = new SegmentGap();
  const axes = { right: axesOf(solids, 1), left: axesOf(solids, -1) };
  let best = Number.POSITIVE_INFINITY;
  for (const { move, positions, count } of moves) {
    const own = axes[move.side];
    for (let k = 0; k < count; k++) {
      for (const { at, radius } of arm.parts) {
        for (const [solid, { capsule }] of solids.entries()) {
          const apart = gap.measure(own, solid * 6, positions, k * POSITION + at);
          const clearance = apart - radius - capsule.radius;
          if (clearance < best) best = clearance;
        }
      }
    }
  }
  return best;
}

/** Ends of all axes in the hand space of one side. */
const axesOf = (solids: readonly MicSolid[], sign: 1 | -1): Float64Array =>
  Float64Array.from(
    solids.flatMap(({ capsule: { a, b } }) => [sign * a.x, a.y, a.z, sign * b.x, b.y, b.z]),
  );

function sampleSwings(
  { pieces }: Pick<Layout, 'pieces'>,
  solids: readonly MicSolid[],
): readonly number[] {
  return swingsOf(pieces).flatMap((swing) =>
    solids.flatMap(({ capsule: { a, b, radius } }) => {
      const steps = Math.ceil(distance(a, b) / (2 * ACCURACY));
      const way = subtract(b, a);
      return Array.from(
        { length: steps + 1 },
        (_, k) => rockingDiscDistance(swing, along(a, way, steps > 0 ? k / steps : 0)) - radius,
      );
    }),
  );
}
