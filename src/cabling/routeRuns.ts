import { passesThrough } from '../geometry/convexPolygon.ts';
import { rectangleGap } from '../geometry/leave.ts';
import { listed } from '../geometry/listed.ts';
import { isSameList } from '../geometry/remembered.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { toDeck } from '../rig/deckFrame.ts';
import type { Footprint, MicSolid, PlacedMic, PlacedPiece, Rig } from '../rig/placed.ts';
import { boxObstacle } from './box.ts';
import { keepingOf } from './deckFloor.ts';
import { micObstacles, pieceObstacles } from './floorObstacles.ts';
import { createFloors, createLayWay, type Floors, type LaidWay, type LayWay } from './layWay.ts';
import { lazily } from './lazily.ts';
import type { Keeping, Obstacle } from './obstacle.ts';
import type { Run } from './run.ts';
import { runAlong } from './runParts.ts';

/** The cables of a layout: what they keep off, and one run for every mic with the way it is laid, in the layout's order. */
export interface CableRouting {
  readonly obstacles: readonly Obstacle[];
  readonly runs: readonly Run[];
  readonly ways: readonly LaidWay[];
  /** The floors as they now are: not those on which a kept way was found. */
  readonly floors: Floors;
}

/**
 * Every run of a layout. A mic without an input has a run too, to the middle of the box's side: the cable it will take.
 */
export const routeRuns = (layout: Layout, rig: Rig): readonly Run[] =>
  createCableRouter()(layout, rig).runs;

/**
 * Routes one layout after another as it is edited, with the same results as {@link routeRuns}: what no change touches (by
 * identity) is kept from the last call.
 *
 * C1 The obstacles of a piece or mic are kept while it, the kit's place on the deck and the distance to keep stay; those of a
 *    mic also when it moved but its feet did not.
 * C2 While deck, box and cabling stay, the way of a cable that comes down in the same place for the same input is kept if all
 *    obstacles stay, and else if it touches none that came, rests on none that went, and none of both is near to an end that
 *    must be left by a way out (W3). Of several ways of exactly equal length it may so be another one.
 */
export function createCableRouter(): (layout: Layout, rig: Rig) => CableRouting {
  const obstaclesOf = createObstacleKeeper();
  let last: { layout: Layout; routing: CableRouting; lay: () => LayWay } | undefined;
  let known = new Map<Id, KnownRun>();
  return (layout, rig) => {
    const found = obstaclesOf(layout, rig);
    const isSameFloor = last !== undefined && sameFloor(last.layout, layout);
    const before = last?.routing.obstacles ?? [];
    const isStill = isSameList(before, found);
    const change = isStill ? undefined : changeOf(before, found);
    const obstacles = last && isStill ? last.routing.obstacles : found;
    const isKept = last !== undefined && isSameFloor && isStill;
    const floors = last && isKept ? last.routing.floors : createFloors(layout, found);
    const lay = last && isKept ? last.lay : lazily(() => createLayWay(layout, found, floors));
    const runs = listed(rig.mics, (placed): KnownRun => {
      const run = isSameFloor ? known.get(placed.mic.id) : undefined;
      const kept = run && (!change || isUntouched(run, change)) ? run : undefined;
      if (kept?.placed === placed) return kept;
      const start = toDeck(layout.deck, placed.deckPoint);
      const { input } = placed.mic;
      const isSameLine = kept?.placed.mic.input === input && isSamePlace(kept.start, start);
      const way = isSameLine ? kept.way : lay()(start, input);
      return { placed, start, run: runAlong(placed, way, layout), way };
    });
    known = new Map(runs.map((run) => [run.placed.mic.id, run]));
    const routing = {
      obstacles,
      runs: listed(runs, ({ run }) => run),
      ways: listed(runs, ({ way }) => way),
      floors,
    };
    last = { layout, lay, routing };
    return routing;
  };
}

interface KnownRun {
  readonly placed: PlacedMic;
  /** Where the cable comes down. */
  readonly start: Vec2<'deck'>;
  readonly run: Run;
  readonly way: LaidWay;
}

interface Change {
  readonly gone: ReadonlySet<Obstacle>;
  readonly added: readonly Obstacle[];
}

function changeOf(before: readonly Obstacle[], now: readonly Obstacle[]): Change {
  const old = new Set(before);
  const current = new Set(now);
  return {
    gone: new Set(before.filter((obstacle) => !current.has(obstacle))),
    added: now.filter((obstacle) => !old.has(obstacle)),
  };
}

/** C2 */
const isUntouched = ({ way }: KnownRun, { gone, added }: Change): boolean =>
  way.restsOn !== null &&
  !way.restsOn.some((obstacle) => gone.has(obstacle)) &&
  !added.some((obstacle) => isMet(way, obstacle) || isNearEnd(way, obstacle)) &&
  ![...gone].some((obstacle) => isNearEnd(way, obstacle));

const isMet = ({ route }: LaidWay, { outline }: Obstacle): boolean =>
  route.some((p, i) => passesThrough(outline, route[i - 1] ?? p, p));

const isNearEnd = ({ ends }: LaidWay, { outline }: Obstacle): boolean =>
  ends.some(({ place, within }) => within > 0 && rectangleGap(outline, place) <= within);

const isSamePlace = (p: Vec2<'deck'>, q: Vec2<'deck'>): boolean => p.x === q.x && p.y === q.y;

const sameFloor = (p: Layout, q: Layout): boolean =>
  p.deck === q.deck && p.box === q.box && p.cabling === q.cabling;

/** {@link floorObstacles}, with those of every unchanged piece and mic kept. */
function createObstacleKeeper(): (layout: Layout, rig: Rig) => readonly Obstacle[] {
  let made: { deck: Layout['deck']; keepAway: number; keeping: Keeping } | undefined;
  let ofPieces = new WeakMap<PlacedPiece, readonly Obstacle[]>();
  let ofMics = new WeakMap<PlacedMic, readonly Obstacle[]>();
  let ofStands = new Map<Id, OnFeet>();
  let ofBox = new WeakMap<Layout['box'], readonly Obstacle[]>();
  return (layout, rig) => {
    const { deck, cabling, box } = layout;
    if (made?.deck !== deck || made.keepAway !== cabling.keepAway) {
      made = { deck, keepAway: cabling.keepAway, keeping: keepingOf(layout) };
      ofPieces = new WeakMap();
      ofMics = new WeakMap();
      ofStands = new Map();
      ofBox = new WeakMap();
    }
    const { keeping } = made;
    return [
      ...rig.pieces.flatMap((placed) =>
        keep(ofPieces, placed, () => pieceObstacles(placed, keeping)),
      ),
      ...rig.mics.flatMap((placed) =>
        keep(ofMics, placed, () => onFeet(ofStands, placed, keeping)),
      ),
      ...keep(ofBox, box, () => boxObstacle(layout)),
    ];
  };
}

/** What a mic stands on, and its obstacles. */
interface OnFeet {
  readonly feet: Feet;
  readonly obstacles: readonly Obstacle[];
}

/** A stand's footprint, or the solids of a plate that lies on the deck. */
type Feet = Footprint | readonly MicSolid[];

const isSameFeet = (p: Feet, q: Feet): boolean =>
  p === q || JSON.stringify(p) === JSON.stringify(q);

/** A mic whose tip moved stands on the same feet: its last obstacles are kept. */
function onFeet(
  ofStands: Map<Id, OnFeet>,
  placed: PlacedMic,
  keeping: Keeping,
): readonly Obstacle[] {
  const { mic, stand, solids } = placed;
  const feet = stand?.footprint ?? (mic.mount.kind === 'plateOnDeck' ? solids : []);
  const before = ofStands.get(mic.id);
  if (before && isSameFeet(before.feet, feet)) return before.obstacles;
  const obstacles = micObstacles(placed, keeping);
  ofStands.set(mic.id, { feet, obstacles });
  return obstacles;
}

function keep<K extends object, V>(kept: WeakMap<K, V>, key: K, make: () => V): V {
  const known = kept.get(key);
  if (known !== undefined) return known;
  const value = make();
  kept.set(key, value);
  return value;
}
