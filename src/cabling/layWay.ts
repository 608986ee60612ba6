import { convexHull, passesThrough } from '../geometry/convexPolygon.ts';
import { listed } from '../geometry/listed.ts';
import { holds, nearestIn, type Rectangle } from '../geometry/plan.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { deckOutline } from '../rig/deckFrame.ts';
import { boxIsOnDeck, type InputPlace, inputPlace, obstacleOfBox } from './box.ts';
import { deckRectangle } from './deckFloor.ts';
import {
  type ClearPart,
  createFloorRouter,
  type FloorRouter,
  type FloorWay,
  type WatchedEnd,
} from './floorWay.ts';
import type { Obstacle } from './obstacle.ts';

type Spot = Vec2<'deck'>;

/** The way of one cable over deck and stage floor, from where it comes down to its input. Deck frame. */
export interface LaidWay {
  readonly route: readonly Spot[];
  /** How many times it goes over the deck's edge. */
  readonly edges: number;
  readonly through: readonly Id[];
  /** As for a {@link FloorWay}; null also for every way that goes over the deck's edge. */
  readonly restsOn: readonly Obstacle[] | null;
  readonly ends: readonly WatchedEnd[];
  /** The parts of the route that keep clear of everything on their floor, and could be laid otherwise there. */
  readonly legs: readonly WayLeg[];
}

/** A part of a route on one floor. */
export interface WayLeg extends ClearPart {
  readonly floor: keyof Floors;
}

/** The deck, and the stage floor for cables that come over the deck's edge to a box beside it. */
export interface Floors {
  readonly deck: FloorRouter;
  readonly stage: FloorRouter;
}

/** Lays the cable that comes down at `start` to an input (null: to the middle of the box's side). */
export type LayWay = (start: Spot, input: number | null) => LaidWay;

/** Far beyond any coordinate of a layout, mm. */
const FAR = 1e6;
const stageFloor: Rectangle<'deck'> = { low: { x: -FAR, y: -FAR }, high: { x: FAR, y: FAR } };

/**
 * Ways over the deck and the stage floor beside it.
 *
 * D1 With box and start on the deck, the way keeps on the deck. What stands in front of the input is named with what else
 *    it passes (W5).
 * D2 To a box beside the deck, all cables go over the deck's edge at one place, the clear point nearest to the box on the edge
 *    nearest to it: one place to dress and to cover. On the stage floor they keep off the box itself.
 * D3 A cable that comes down beside the deck goes straight to the deck's nearest edge, over it, and on as the others; but
 *    where box and start both stand beside the deck and it does not lie between them, it stays on the stage floor.
 */
export function createLayWay(
  layout: Layout,
  obstacles: readonly Obstacle[],
  floors = createFloors(layout, obstacles),
): LayWay {
  const deck = deckRectangle(layout.deck);
  const isOnDeck = boxIsOnDeck(layout);
  const toBox = isOnDeck ? onDeck(layout, floors.deck) : besideDeck(layout, floors);
  const aroundDeck = isOnDeck ? undefined : besideBoth(layout, obstacles);
  return (start, input) => {
    if (holds(deck, start)) return toBox(start, input);
    const staysDown = aroundDeck?.(start, input);
    if (staysDown) return staysDown;
    const way = toBox(overEdge(floors.deck, deck, start), input);
    const route = [start, ...way.route];
    return {
      ...way,
      route,
      edges: way.edges + 1,
      restsOn: null,
      ends: [],
      legs: shifted(way.legs, 1),
    };
  };
}

/** The floors of a layout. Their obstacles are not looked at before the first way is asked for. */
export const createFloors = (layout: Layout, obstacles: readonly Obstacle[]): Floors => ({
  deck: createFloorRouter(obstacles, deckRectangle(layout.deck)),
  stage: createFloorRouter([obstacleOfBox(layout)], stageFloor),
});

const shifted = (legs: readonly WayLeg[], by: number): readonly WayLeg[] =>
  listed(legs, (leg) => ({ ...leg, first: leg.first + by, last: leg.last + by }));

const legOf = (floor: keyof Floors, { clear }: FloorWay): readonly WayLeg[] =>
  clear ? [{ floor, ...clear }] : [];

/** Where a cable goes over the deck's edge to or from a place beside it. */
function overEdge(floor: FloorRouter, deck: Rectangle<'deck'>, beside: Spot): Spot {
  const place = nearestIn(deck, beside);
  const isAtSide = place.x !== beside.x;
  const low = isAtSide ? { x: place.x, y: deck.low.y } : { x: deck.low.x, y: place.y };
  const high = isAtSide ? { x: place.x, y: deck.high.y } : { x: deck.high.x, y: place.y };
  return floor.nearestClear(place, { low, high });
}

/** D1 */
const onDeck =
  (layout: Layout, floor: FloorRouter): LayWay =>
  (start, input) =>
    intoBox(floor, 'deck', start, inputPlace(layout, input));

/** D2 */
function besideDeck(layout: Layout, { deck: floor, stage }: Floors): LayWay {
  const deck = deckRectangle(layout.deck);
  const over = overEdge(floor, deck, layout.box);
  return (start, input) => {
    const above = floor.way(start, over);
    const place = inputPlace(layout, input);
    // Inputs that face the deck from close by leave no room to come straight on.
    const rest = holds(deck, place.before)
      ? { route: [over, place.spot], legs: [] }
      : intoBox(stage, 'stage', over, place);
    const route = [...above.points, ...rest.route.slice(1)];
    const legs = [...legOf('deck', above), ...shifted(rest.legs, above.points.length - 1)];
    return { route, edges: 1, through: above.through, restsOn: null, ends: [], legs };
  };
}

/** D3: undefined where the deck lies between. */
function besideBoth(
  layout: Layout,
  obstacles: readonly Obstacle[],
): (start: Spot, input: number | null) => LaidWay | undefined {
  const deck = convexHull(deckOutline(layout.deck));
  const floor = createFloorRouter([...obstacles, obstacleOfBox(layout)], stageFloor);
  return (start, input) => {
    const place = inputPlace(layout, input);
    if (deck && passesThrough(deck, start, place.before)) return undefined;
    return { ...intoBox(floor, 'stage', start, place), legs: [] };
  };
}

function intoBox(
  floor: FloorRouter,
  name: keyof Floors,
  start: Spot,
  { spot, before }: InputPlace,
): LaidWay {
  const way = floor.way(start, before);
  const last = floor.between(before, spot);
  const all = [...way.through];
  for (const id of last) if (!all.includes(id)) all.push(id);
  return {
    route: [...way.points, spot],
    edges: 0,
    through: all,
    restsOn: all.length > 0 ? null : way.restsOn,
    ends: way.ends,
    legs: legOf(name, way),
  };
}
