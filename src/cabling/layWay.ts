import { convexHull, passesThrough } from '../geometry/convexPolygon.ts';
import { holds, nearestIn, type Rectangle } from '../geometry/plan.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { deckOutline } from '../rig/deckFrame.ts';
import { boxIsOnDeck, type InputPlace, inputPlace, obstacleOfBox } from './box.ts';
import { deckRectangle } from './deckFloor.ts';
import { createFloorRouter, type FloorRouter } from './floorWay.ts';
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
export function createLayWay(layout: Layout, obstacles: readonly Obstacle[]): LayWay {
  const deck = deckRectangle(layout.deck);
  const floor = createFloorRouter(obstacles, deck);
  const toBox = boxIsOnDeck(layout) ? onDeck(layout, floor) : besideDeck(layout, floor);
  const aroundDeck = boxIsOnDeck(layout) ? undefined : besideBoth(layout, obstacles);
  return (start, input) => {
    if (holds(deck, start)) return toBox(start, input);
    const staysDown = aroundDeck?.(start, input);
    if (staysDown) return staysDown;
    const way = toBox(overEdge(floor, deck, start), input);
    return { ...way, route: [start, ...way.route], edges: way.edges + 1, restsOn: null };
  };
}

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
    intoBox(floor, start, inputPlace(layout, input));

/** D2 */
function besideDeck(layout: Layout, floor: FloorRouter): LayWay {
  const deck = deckRectangle(layout.deck);
  const over = overEdge(floor, deck, layout.box);
  const below = createFloorRouter([obstacleOfBox(layout)], stageFloor);
  return (start, input) => {
    const above = floor.way(start, over);
    const place = inputPlace(layout, input);
    // Inputs that face the deck from close by leave no room to come straight on.
    const rest = holds(deck, place.before) ? [over, place.spot] : intoBox(below, over, place).route;
    const route = [...above.points, ...rest.slice(1)];
    return { route, edges: 1, through: above.through, restsOn: null };
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
    return intoBox(floor, start, place);
  };
}

function intoBox(floor: FloorRouter, start: Spot, { spot, before }: InputPlace): LaidWay {
  const { points, through, restsOn } = floor.way(start, before);
  const last = floor.between(before, spot);
  const all = [...new Set([...through, ...last])];
  return {
    route: [...points, spot],
    edges: 0,
    through: all,
    restsOn: all.length > 0 ? null : restsOn,
  };
}
