import { overlaps } from '../geometry/convexPolygon.ts';
import { gap } from '../geometry/plan.ts';
import type { Box } from '../layout/cabling.ts';
import type { Deck, Stairs } from '../layout/deck.ts';
import type { Layout } from '../layout/layout.ts';
import { BOX_DEPTH, boxCorners } from '../rig/boxShape.ts';
import type { Rig } from '../rig/placed.ts';
import { stairsOutward } from '../rig/stairs.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import { accessLane } from './accessLane.ts';
import { obstacleOfBox } from './box.ts';
import { type Obstacle, standsIn } from './obstacle.ts';
import { createSpotJudge, type Judgement } from './spotJudge.ts';

type Edge = Stairs['edge'];
const EDGES: readonly Edge[] = ['front', 'right', 'back', 'left'];

/** A place for the box at an edge of the deck, and what the cables then need on their own shortest ways. */
export interface BoxSpot extends Judgement {
  readonly edge: Edge;
  /** From the edge's middle to the box's, toward the player's right or the audience, as for stairs. */
  readonly along: Mm;
  readonly box: Box;
}

/** How far the search has come: spots looked at so far, and about how many in all. */
export interface SpotProgress {
  readonly done: number;
  readonly of: number;
}

export interface BoxSpots {
  /** Every spot of the first look, edge by edge, in order along each: for drawing. */
  readonly along: readonly BoxSpot[];
  /** The best, each at least {@link APART} from a better one; best first. */
  readonly byCable: readonly BoxSpot[];
  readonly byLongest: readonly BoxSpot[];
}

export interface SpotSettings {
  readonly edges: readonly Edge[];
  /** From one spot of the first look to the next. */
  readonly step: Mm;
  /** How many of the best are told. */
  readonly most: number;
}

export const USUAL_SPOTS: SpotSettings = { edges: EDGES, step: 200, most: 3 };

/** Nearer spots are one choice, not two. */
const APART: Mm = 600;
/** The best are moved along the edge in halving steps down to this. */
const FINEST: Mm = 10;

/**
 * The best spots for the box along the edges of the deck. An iterator: each step looks at one spot and says how far it has
 * come; the last gives the spots. Who wants to stop stops asking.
 *
 * Q1 The box stands on the deck, flush with the edge, its inputs facing inward; all of it between the edge's ends.
 * Q2 No spot is one where the box overlaps what stands on the deck or the player's foot space, the access lane or the
 *    width of stairs.
 * Q3 Each spot is judged by the runs as they would be routed: fewest without a clear way, then least cable, or shortest longest run.
 * Q4 After a first look every `step` along each edge, the best are moved along their edge as long as they get better.
 */
export function* boxSpots(
  layout: Layout,
  rig: Rig,
  settings: SpotSettings = USUAL_SPOTS,
): Generator<SpotProgress, BoxSpots, void> {
  const judge = createSpotJudge(layout, rig);
  const isAllowed = createRule(layout, judge.obstacles);
  const spotAt = (edge: Edge, along: Mm): BoxSpot | undefined => {
    const box = boxAt(layout, edge, along);
    return box && isAllowed(edge, along, box) ? { edge, along, box, ...judge.at(box) } : undefined;
  };
  const places = settings.edges.flatMap((edge) =>
    firstLook(layout, edge, settings.step).map((along) => ({ edge, along })),
  );
  const all: BoxSpot[] = [];
  const of = places.length + 2 * (settings.most + 1);
  for (const [done, { edge, along }] of places.entries()) {
    yield { done, of };
    const spot = spotAt(edge, along);
    if (spot) all.push(spot);
  }
  const refined: Record<'cable' | 'longest', BoxSpot[]> = { cable: [], longest: [] };
  let done = places.length;
  for (const by of ['cable', 'longest'] as const) {
    // Of two that become one on the way up, one is lost: so one more sets out.
    for (const spot of bestOf(all, by, settings.most + 1)) {
      yield { done, of };
      done += 1;
      refined[by].push(refine(spot, { by, spotAt, step: settings.step }));
    }
  }
  return {
    along: all,
    byCable: bestOf(refined.cable, 'cable', settings.most),
    byLongest: bestOf(refined.longest, 'longest', settings.most),
  };
}

type Measure = 'cable' | 'longest';

/** Q3 */
function compare(by: Measure): (p: BoxSpot, q: BoxSpot) => number {
  const other = by === 'cable' ? 'longest' : 'cable';
  return (p, q) => p.blocked - q.blocked || p[by] - q[by] || p[other] - q[other];
}

function bestOf(spots: readonly BoxSpot[], by: Measure, most: number): BoxSpot[] {
  const best: BoxSpot[] = [];
  for (const spot of [...spots].sort(compare(by))) {
    if (best.length === most) break;
    const isNear = ({ edge, along }: BoxSpot): boolean =>
      edge === spot.edge && Math.abs(along - spot.along) < APART;
    if (!best.some(isNear)) best.push(spot);
  }
  return best;
}

interface Refining {
  readonly by: Measure;
  readonly spotAt: (edge: Edge, along: Mm) => BoxSpot | undefined;
  readonly step: Mm;
}

/** Q4 */
function refine(from: BoxSpot, { by, spotAt, step }: Refining): BoxSpot {
  const isBetter = compare(by);
  let best = from;
  for (let shift = step / 2; shift >= FINEST; shift /= 2) {
    const aside = [best.along - shift, best.along + shift];
    const spots = aside.flatMap((along) => spotAt(from.edge, along) ?? []);
    for (const spot of spots) if (isBetter(spot, best) < 0) best = spot;
  }
  return best;
}

/** Q1: places along an edge, both ends first and last. */
function firstLook({ deck, box }: Layout, edge: Edge, step: Mm): Mm[] {
  const room = lengthOf(deck, edge) - boxWidth(box);
  if (room < 0) return [];
  const steps = Math.max(1, Math.ceil(room / step));
  return Array.from({ length: steps + 1 }, (_, i) => -room / 2 + (room * i) / steps);
}

const lengthOf = ({ width, depth }: Deck, edge: Edge): Mm =>
  edge === 'front' || edge === 'back' ? width : depth;

/** The direction of inputs that face inward. */
const FACING: Readonly<Record<Edge, Degrees>> = { front: 270, back: 90, left: 0, right: 180 };

/** Q1: undefined where the box would stand beyond the edge's ends. */
function boxAt({ deck, box }: Layout, edge: Edge, along: Mm): Box | undefined {
  const room = (lengthOf(deck, edge) - boxWidth(box)) / 2;
  if (Math.abs(along) > room + ROUNDING) return undefined;
  const out = stairsOutward[edge];
  const across =
    (lengthOf(deck, edge === 'front' || edge === 'back' ? 'left' : 'front') - BOX_DEPTH) / 2;
  const x = out.x === 0 ? along : out.x * across;
  const y = out.y === 0 ? along : out.y * across;
  return { ...box, x, y, turn: FACING[edge] };
}

/** Places at the ends of an edge are rounded. */
const ROUNDING: Mm = 1e-6;

function boxWidth(box: Box): Mm {
  const [left, right] = boxCorners(box);
  return left && right ? gap(left, right) : 0;
}

/** Q2 */
function createRule(
  layout: Layout,
  obstacles: readonly Obstacle[],
): (edge: Edge, along: Mm, box: Box) => boolean {
  const lane = accessLane(layout);
  return (edge, along, box) => {
    const { body } = obstacleOfBox({ ...layout, box });
    if (obstacles.some((obstacle) => standsIn(body, obstacle))) return false;
    if (lane && overlaps(lane, body)) return false;
    return !layout.deck.stairs.some(
      (stairs) =>
        stairs.edge === edge &&
        Math.abs(stairs.offset - along) < (stairs.width + boxWidth(box)) / 2,
    );
  };
}
