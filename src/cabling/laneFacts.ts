import type { ConvexPolygon } from '../geometry/convexPolygon.ts';
import { listed } from '../geometry/listed.ts';
import { remembered } from '../geometry/remembered.ts';
import type { Deck } from '../layout/deck.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import { stairsMiddle } from '../rig/stairs.ts';
import {
  accessLane,
  beforeStairs,
  beyondEdge,
  type LaneCrossing,
  laneBlocks,
  laneCrossing,
} from './accessLane.ts';
import type { CableRun } from './cables.ts';
import type { CablingFact } from './cablingFact.ts';
import { onDeck } from './deckFloor.ts';
import type { Obstacle } from './obstacle.ts';

/** K5: what lies where someone walks. */
export type CrossingFacts = (runs: readonly CableRun[], layout: Layout) => readonly CablingFact[];

type Strip = ConvexPolygon<'deck'>;
type CrossingOf = (route: CableRun['route']) => LaneCrossing | undefined;

/** The facts of one layout after another: a route that stays is compared only once with a strip that stays. */
export function createCrossingFacts(): CrossingFacts {
  const laneOf = createLane();
  const stairsOf = remembered((deck: Deck) =>
    listed(deck.stairs, (stairs) => beforeStairs(stairs, deck)),
  );
  const crossingsOf = remembered(
    (strip: Strip): CrossingOf => remembered((route) => laneCrossing(strip, route)),
  );
  return (runs, layout) => {
    const lane = laneOf(layout);
    const crossed = lane ? crossingFact(runs, layout, crossingsOf(lane)) : undefined;
    const told = new Set<Id>(crossed?.ids);
    const others = runs.filter(({ mic }) => !told.has(mic));
    const atStairs = stairsOf(layout.deck).flatMap((strip, which): CablingFact[] => {
      const found = crossingFact(others, layout, crossingsOf(strip));
      return found ? [{ ...found, code: 'stairs-crossed', which: String(which) }] : [];
    });
    return [...(crossed ? [{ ...crossed, code: 'lane-crossed' } as const] : []), ...atStairs];
  };
}

/** {@link accessLane}, kept while deck and throne stay. */
function createLane(): (layout: Layout) => Strip | undefined {
  let last:
    | { readonly deck: Deck; readonly throne: Piece | undefined; readonly lane: Strip | undefined }
    | undefined;
  return (layout) => {
    const { deck, pieces } = layout;
    const throne = pieces.find(({ kind }) => kind === 'throne');
    if (last?.deck !== deck || last.throne !== throne) {
      last = { deck, throne, lane: accessLane(layout) };
    }
    return last.lane;
  };
}

/** All cables that lie in a strip, as one fact: a bundle is covered once. */
function crossingFact(
  runs: readonly CableRun[],
  layout: Layout,
  crossingOf: CrossingOf,
): Omit<CablingFact, 'code'> | undefined {
  const crossings = runs.flatMap(({ mic, route }) => {
    const crossing = crossingOf(route);
    return crossing ? [{ mic, ...crossing }] : [];
  });
  const [first, ...more] = crossings;
  if (!first) return undefined;
  const longest = more.reduce((best, next) => (next.length > best.length ? next : best), first);
  const place = onDeck(layout, longest.place);
  return {
    ids: listed(crossings, ({ mic }) => mic),
    which: '',
    place,
    numbers: { length: longest.length },
  };
}

/** K8 */
export const blockFacts = (layout: Layout, obstacles: readonly Obstacle[]): CablingFact[] =>
  laneBlocks(layout, obstacles).map(({ owner, place, overlap }) => ({
    code: 'lane-blocked',
    ids: owner === null ? [] : [owner],
    place: onDeck(layout, place),
    numbers: { overlap },
  }));

/** K9 */
export const stairsFacts = (layout: Layout): CablingFact[] =>
  layout.deck.stairs.flatMap((stairs, which): CablingFact[] => {
    const beyond = beyondEdge(stairs, layout.deck);
    if (beyond <= 0) return [];
    const place = onDeck(layout, stairsMiddle(stairs, layout.deck));
    return [{ code: 'stairs-off-edge', ids: [], which: String(which), place, numbers: { beyond } }];
  });
