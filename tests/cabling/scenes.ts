import type { Obstacle, ObstacleKind } from '../../src/cabling/obstacle.ts';
import { type ConvexPolygon, convexHull } from '../../src/geometry/convexPolygon.ts';
import { circleCorners, grown } from '../../src/geometry/grow.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { findMicClass } from '../../src/layout/catalogue/micClasses.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { PlacedMic, Rig } from '../../src/rig/placed.ts';

export type Spot = Vec2<'deck'>;

/** Every layout a user can start from. */
export const startingLayouts: readonly Layout[] = STARTING_KITS.map(({ key, make }) => make(key));

export function startingLayout(key: string): Layout {
  const kit = STARTING_KITS.find((entry) => entry.key === key);
  if (!kit) throw new Error(`There is no starting kit ${key}.`);
  return kit.make(key);
}

/** Nothing on a 6 x 4 m deck, 400 high; the kit's origin in its middle; a box of 8 on its left, facing right. */
export const bareLayout: Layout = {
  ...startingLayout('empty-deck'),
  pieces: [],
  mics: [],
  deck: { width: 6000, depth: 4000, height: 400, kit: { x: 0, y: 0, turn: 0 }, stairs: [] },
  box: { x: -2000, y: 0, turn: 0, inputs: 8, tail: 15_000 },
  cabling: { loopAtMic: 500, loopAtBox: 400, dressing: 10, keepAway: 50, neatness: 0, stock: [] },
};

/** A mic whose cable hangs straight down to a point of the plan: it has no stand that could be in the way. */
export function hangingMic(id: string, at: Vec2, input: number | null): PlacedMic {
  const micClass = findMicClass(bareLayout, 'compact-dynamic');
  if (!micClass) throw new Error('a built-in class was expected');
  const mount = {
    kind: 'clip',
    drum: 'none',
    material: 'rubber',
    angle: 0,
    reach: 0,
    height: 30,
    pitch: 0,
  } as const;
  return {
    mic: { id, name: id, micClass: micClass.id, hears: [], mount, input },
    micClass,
    tip: { x: at.x, y: at.y, z: 1000 },
    axis: { x: 0, y: 0, z: -1 },
    solids: [],
    stand: null,
    descent: [{ along: 'air', length: 1000 }],
    deckPoint: at,
  };
}

/** The layout with these mics, and its rig. */
export function withMics(layout: Layout, mics: readonly PlacedMic[]): [Layout, Rig] {
  const placed = { ...layout, mics: mics.map(({ mic }) => mic) };
  return [placed, { pieces: buildRig({ ...layout, mics: [] }).pieces, mics }];
}

export function hull(points: readonly Spot[]): ConvexPolygon<'deck'> {
  const found = convexHull<'deck'>(points);
  if (!found) throw new Error('three points that are not on one line were expected');
  return found;
}

export const rectangle = (low: Spot, high: Spot): readonly Spot[] => [
  low,
  { x: high.x, y: low.y },
  high,
  { x: low.x, y: high.y },
];

/** An obstacle of any shape on the deck, kept off by 50 mm. */
export const obstacle = (
  owner: string,
  kind: ObstacleKind,
  points: readonly Spot[],
  keepAway = 50,
): Obstacle => ({ kind, owner, body: hull(points), outline: hull(grown(points, keepAway)) });

export const disc = (owner: string, kind: ObstacleKind, at: Spot, radius: number): Obstacle =>
  obstacle(owner, kind, circleCorners(at, radius));
