import fc from 'fast-check';
import { type ConvexPolygon, isInside } from '../../src/geometry/convexPolygon.ts';
import { wayLength } from '../../src/geometry/plan.ts';
import { createRouter } from '../../src/geometry/shortestPath.ts';
import type { Place, Tangents } from '../../src/geometry/tangents.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import type { GatherWeights, WayToGather } from '../../src/geometry/wayTree.ts';
import { obstacles, planPoint, shareInside } from './planScenes.ts';

/** A few starts and one end among a few obstacles, all clear of them. */
export interface GatherScene {
  readonly scene: readonly ConvexPolygon[];
  readonly starts: readonly Vec2[];
  readonly end: Vec2;
}

export const gatherScene = (mostWays: number, mostObstacles: number): fc.Arbitrary<GatherScene> =>
  fc
    .record({
      scene: obstacles(mostObstacles),
      starts: fc.array(planPoint, { minLength: 1, maxLength: mostWays }),
      end: planPoint,
    })
    .filter(({ scene, starts, end }) =>
      [...starts, end].every((p) => !scene.some((obstacle) => isInside(obstacle, p))),
    );

/** The ways of a scene, each on its own shortest way; undefined where one has none. */
export function waysOf(
  { scene, starts, end }: GatherScene,
  longest: number,
): { readonly tangents: Tangents<'kit'>; readonly ways: readonly WayToGather[] } | undefined {
  const router = createRouter(scene);
  const { tangents } = router;
  const goal = tangents.place(end);
  const ways: WayToGather[] = [];
  for (const start of starts) {
    const own = router.route({ point: start }, { point: end });
    if (!own) return undefined;
    const places: Place[] = own.points.slice(0, -1).map((point) => tangents.place(point));
    ways.push({ own: [...places, goal], most: longest * own.length + 1e-9 });
  }
  return { tangents, ways };
}

/** What ways cost together: every line once, and every way. */
export function costOf(ways: readonly (readonly Vec2[])[], { each, once }: GatherWeights): number {
  const lines = new Map<string, number>();
  for (const points of ways) {
    for (const [i, q] of points.entries()) {
      const p = points[i - 1] ?? q;
      lines.set(`${p.x} ${p.y} ${q.x} ${q.y}`, wayLength([p, q]));
    }
  }
  const laid = [...lines.values()].reduce((sum, length) => sum + length, 0);
  const all = ways.reduce((sum, points) => sum + wayLength(points), 0);
  return once * laid + each * all;
}

/** A way of gathering some of the starts at a place: what it costs, and how much longer the shortest-lived of them may become. */
interface Label {
  readonly cost: number;
  readonly left: number;
}

/**
 * The cheapest of all trees over starts, end and corners, each seen from each in plain arithmetic, in which no way becomes
 * longer than it may: for every set of starts and every place, by Dreyfus and Wagner's recursion (1971) over the ways of
 * splitting the set, with all pairs of cost and length left that no other pair beats.
 */
export function cheapestTree(
  { scene, starts, end }: GatherScene,
  most: readonly number[],
  { each, once }: GatherWeights,
): number {
  const points = [...starts, end, ...scene.flatMap(({ corners }) => corners)];
  const goal = starts.length;
  const seen = points.map((p, i) =>
    points.map((q, j) =>
      i !== j && scene.every((o) => shareInside(o, p, q) < 1e-9)
        ? wayLength([p, q])
        : Number.POSITIVE_INFINITY,
    ),
  );
  const toGoal = distancesTo(goal, seen);
  const gathered: Label[][][] = [points.map(() => [])];
  for (let set = 1; set < 1 << starts.length; set += 1) {
    const at: Label[][] = points.map(() => []);
    const open: { place: number; label: Label }[] = [];
    const offer = (place: number, label: Label): void => {
      const known = at[place] ?? [];
      const isBeaten = known.some(({ cost, left }) => cost <= label.cost && left >= label.left);
      if (isBeaten || label.left < (toGoal[place] ?? 0) - 1e-6) return;
      at[place] = [
        ...known.filter(({ cost, left }) => cost < label.cost || left > label.left),
        label,
      ];
      open.push({ place, label });
    };
    const members = starts.flatMap((_, i) => (set & (1 << i) ? [i] : []));
    const [only] = members;
    if (members.length === 1 && only !== undefined) offer(only, { cost: 0, left: most[only] ?? 0 });
    for (let part = (set - 1) & set; part > set - part; part = (part - 1) & set) {
      for (const place of points.keys()) {
        for (const p of gathered[part]?.[place] ?? []) {
          for (const q of gathered[set - part]?.[place] ?? []) {
            offer(place, { cost: p.cost + q.cost, left: Math.min(p.left, q.left) });
          }
        }
      }
    }
    const perMm = once + members.length * each;
    while (open.length > 0) {
      open.sort((p, q) => q.label.cost - p.label.cost);
      const next = open.pop();
      if (!next || !at[next.place]?.includes(next.label)) continue;
      for (const [to, length] of seen[next.place]?.entries() ?? []) {
        if (length === Number.POSITIVE_INFINITY) continue;
        const { cost, left } = next.label;
        offer(to, { cost: cost + length * perMm, left: left - length });
      }
    }
    gathered.push(at);
  }
  return Math.min(...(gathered.at(-1)?.[goal] ?? []).map(({ cost }) => cost));
}

function distancesTo(goal: number, seen: readonly (readonly number[])[]): number[] {
  const best = seen.map((_, i) => (i === goal ? 0 : Number.POSITIVE_INFINITY));
  for (let round = 0; round < seen.length; round += 1) {
    for (const [i, row] of seen.entries()) {
      for (const [j, length] of row.entries()) {
        best[i] = Math.min(best[i] ?? 0, length + (best[j] ?? 0));
      }
    }
  }
  return best;
}
