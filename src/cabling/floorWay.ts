import { type ConvexPolygon, isInside, passesThrough } from '../geometry/convexPolygon.ts';
import { type LookAround, lookAround, rectangleGap, waysOut } from '../geometry/leave.ts';
import { listed } from '../geometry/listed.ts';
import type { Rectangle } from '../geometry/plan.ts';
import { createRouter, type Router, type Way } from '../geometry/shortestPath.ts';
import type { Tangents } from '../geometry/tangents.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';
import { lazily } from './lazily.ts';
import type { Obstacle, ObstacleKind } from './obstacle.ts';

type Spot = Vec2<'deck'>;

/** A way over one floor, from end to end. Deck frame. */
export interface FloorWay {
  readonly points: readonly Spot[];
  /** Whose obstacles had to be passed, in the layout's order; empty when the way keeps clear. */
  readonly through: readonly Id[];
  /**
   * For a way under W1 to W3: the obstacles it rests on. With any of the others taken away, it stays the shortest; so it does
   * with any added that it does not touch, if neither come near to its ends. Null for every other way.
   */
  readonly restsOn: readonly Obstacle[] | null;
  /** How near to its ends other obstacles would change how they are left (W3). */
  readonly ends: readonly WatchedEnd[];
  /** The part of a way under W1 to W3 that keeps off all obstacles; null under W4. */
  readonly clear: ClearPart | null;
}

/** An end of a way, and how near to it obstacles count. */
export interface WatchedEnd {
  readonly place: Spot;
  readonly within: Mm;
}

/** From which to which point a way keeps clear, and where its cable comes down (W2). */
export interface ClearPart {
  readonly first: number;
  readonly last: number;
  readonly from: Spot;
}

export interface FloorRouter {
  /** The way from where a cable comes down to another place on the floor. */
  way(from: Spot, to: Spot): FloorWay;
  /** Straight ways that keep off all obstacles, and the obstacles that don't count for a cable that comes down at a place (W2). */
  tangents(): Tangents<'deck'>;
  freeAt(from: Spot): ReadonlySet<number>;
  /** Whose obstacles really stand on the straight line between two places. */
  between(from: Spot, to: Spot): readonly Id[];
  /** The point of a part of the floor that is nearest to a place and clear of all obstacles; the place itself when none is. */
  nearestClear(place: Spot, within: Rectangle<'deck'>): Spot;
}

/** How many ways out of an obstacle are tried before a way that keeps less distance. */
const MOST_WAYS_OUT = 6;

/**
 * Ways over a floor among obstacles.
 *
 * W1 A way is the shortest that keeps off all obstacles and on the floor.
 * W2 The hub, foot, base or plate that stands over the start is what the cable comes down: it does not count for the way's first
 *    stretch, which leaves it in any direction.
 * W3 An end inside any other obstacle, or nearer to it than the distance to keep, is left by the shortest straight way out.
 *    From there the rest keeps clear. If that leads into a pocket, the next nearest way out is tried.
 * W4 Where there is no such way: the shortest that keeps off what really stands there, without the distance; then one that
 *    also passes the player's foot space; then the straight line.
 * W5 What such a way passes is named: everything it really enters, and under W4 everything it comes too near.
 */
export function createFloorRouter(
  obstacles: readonly Obstacle[],
  region: Rectangle<'deck'>,
): FloorRouter {
  const clear = lazily(() => createRung(obstacles, ({ outline }) => outline, region));
  const rungs = [
    clear,
    lazily(() => createRung(obstacles, ({ body }) => body, region)),
    lazily(() => createRung(obstacles.filter(isSolid), ({ body }) => body, region)),
  ];
  return {
    way(from, to) {
      for (const [step, rung] of rungs.entries()) {
        const way = rung().way(from, to);
        if (!way) continue;
        if (step > 0) {
          return { ...way, ...UNKNOWN, through: passed(clear(), from, [way.points], true) };
        }
        return { ...way, through: passed(clear(), from, beyondClear(way), false) };
      }
      const points = [from, to];
      return { points, through: passed(clear(), from, [points], true), ...UNKNOWN };
    },
    tangents: () => clear().tangents,
    freeAt: (from) => freeAt(clear(), from),
    between: (from, to) => passed(clear(), from, [[from, to]], false),
    nearestClear: (place, within) => wayOutOf(obstacles, place, within) ?? place,
  };
}

/** What is said of a way under W4. */
const UNKNOWN = { restsOn: null, ends: [], clear: null } as const;

function wayOutOf(
  obstacles: readonly Obstacle[],
  place: Spot,
  region: Rectangle<'deck'>,
): Spot | undefined {
  const outlines = listed(obstacles, ({ outline }) => outline);
  const [nearest] = waysOut(place, outlines, { walls: () => [], region, most: 1 });
  return nearest;
}

const isSolid = ({ kind }: Obstacle): boolean => kind !== 'footSpace';

/** W2: whether a cable that starts here comes down on this obstacle. */
const standsOver = (obstacle: Obstacle, start: Spot): boolean =>
  isInside(obstacle.outline, start) &&
  COMES_DOWN.has(obstacle.kind) &&
  isInside(obstacle.body, start);

const COMES_DOWN: ReadonlySet<ObstacleKind> = new Set(['hub', 'foot', 'base', 'plate'] as const);

function freeAt({ obstacles, tangents }: Floor, from: Spot): ReadonlySet<number> {
  let free: Set<number> | undefined;
  for (const i of tangents.holding(from)) {
    const obstacle = obstacles[i];
    if (!obstacle || !standsOver(obstacle, from)) continue;
    free ??= new Set();
    free.add(i);
  }
  return free ?? NONE;
}

/** Obstacles, and the straight ways that keep off all of one shape of theirs: outlines or bodies. */
interface Floor {
  readonly obstacles: readonly Obstacle[];
  readonly tangents: Tangents<'deck'>;
}

/** Ways that keep off one set of polygons. */
interface Rung extends Floor {
  way(from: Spot, to: Spot): Omit<FloorWay, 'through'> | undefined;
}

function createRung(
  obstacles: readonly Obstacle[],
  shapeOf: (obstacle: Obstacle) => ConvexPolygon<'deck'>,
  region: Rectangle<'deck'>,
): Rung {
  const shapes = listed(obstacles, shapeOf);
  const router = createRouter(shapes, region);
  const { tangents } = router;
  const out = (place: Spot, free: ReadonlySet<number>, most: number): LookAround<'deck'> => {
    const counts = (_: unknown, i: number): boolean => !free.has(i);
    // Nearly every place stands clear: nothing is gathered for those.
    if (!tangents.holding(place).some((i) => !free.has(i))) return { out: [place], within: 0 };
    const walls = (within: Mm): ConvexPolygon<'deck'>[] =>
      obstacles
        .filter(
          (obstacle, i) => counts(obstacle, i) && rectangleGap(obstacle.outline, place) <= within,
        )
        .map(({ body }) => body);
    return lookAround(place, shapes.filter(counts), { walls, region, most });
  };
  return {
    obstacles,
    tangents,
    way(from, to) {
      const free = freeAt({ obstacles, tangents }, from);
      const clearEnds = (most: number): Ends => ({
        from: out(from, free, most),
        to: out(to, NONE, most),
      });
      const nearest = clearEnds(1);
      const direct = firstWay(router, nearest, free);
      const middle = direct ?? firstWay(router, clearEnds(MOST_WAYS_OUT), free);
      if (!middle) return undefined;
      const between = withoutRepeats(middle.points);
      const begins = isSame(between[0], from);
      const ends = isSame(between.at(-1), to);
      const points = begins ? [] : [from];
      for (const point of between) points.push(point);
      if (!ends) points.push(to);
      const first = begins ? 0 : 1;
      const heeded = new Set(middle.restsOn);
      return {
        points,
        restsOn: direct ? obstacles.filter((_, i) => heeded.has(i)) : null,
        ends: [
          { place: from, within: nearest.from.within },
          { place: to, within: nearest.to.within },
        ],
        clear: { first, last: first + between.length - 1, from },
      };
    },
  };
}

const NONE: ReadonlySet<number> = new Set();

/** Clear points near the two ends of a way, nearest first. */
interface Ends {
  readonly from: LookAround<'deck'>;
  readonly to: LookAround<'deck'>;
}

function firstWay(
  router: Router<'deck'>,
  ends: Ends,
  free: ReadonlySet<number>,
): Way<'deck'> | undefined {
  for (const a of ends.from.out) {
    for (const b of ends.to.out) {
      const way = router.route({ point: a, free }, { point: b });
      if (way) return way;
    }
  }
  return undefined;
}

/** The parts of a way that lead out of what its ends stand in (W3): the rest enters nothing. */
function beyondClear({
  points,
  clear,
}: Pick<FloorWay, 'points' | 'clear'>): readonly (readonly Spot[])[] {
  if (!clear) return [points];
  const parts = [points.slice(0, clear.first + 1), points.slice(clear.last)];
  return parts.filter(({ length }) => length > 1);
}

/** W5: the owners of what parts of a way that begins at `start` pass, each once: what they enter, or also what they come too near (its outline). */
function passed(
  outlines: Floor,
  start: Spot,
  parts: readonly (readonly Spot[])[],
  nearCounts: boolean,
): readonly Id[] {
  const found = new Set<Id>();
  for (const i of passedOutlines(outlines, parts)) {
    const obstacle = outlines.obstacles[i];
    if (!obstacle || obstacle.owner === null || standsOver(obstacle, start)) continue;
    const { body, owner } = obstacle;
    if (nearCounts || parts.some((part) => leadsThrough(part, body))) found.add(owner);
  }
  return [...found];
}

/** The obstacles whose outlines parts of a way pass through, in order. */
function passedOutlines(
  { tangents }: Floor,
  parts: readonly (readonly Spot[])[],
): readonly number[] {
  const passed = new Set<number>();
  for (const part of parts) {
    for (let i = 1; i < part.length; i += 1) {
      const before = part[i - 1] as Spot;
      const p = part[i] as Spot;
      const blockers = tangents.blockers(tangents.place(before), tangents.place(p));
      for (const obstacle of blockers) passed.add(obstacle);
    }
  }
  return [...passed].sort((p, q) => p - q);
}

function leadsThrough(points: readonly Spot[], shape: ConvexPolygon<'deck'>): boolean {
  let before = points[0];
  for (const p of points) {
    if (before && passesThrough(shape, before, p)) return true;
    before = p;
  }
  return false;
}

const withoutRepeats = (points: readonly Spot[]): readonly Spot[] =>
  points.filter((p, i) => !isSame(points[i - 1], p));

const isSame = (p: Spot | undefined, q: Spot): boolean => p?.x === q.x && p.y === q.y;
