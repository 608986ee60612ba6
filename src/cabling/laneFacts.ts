import type { ConvexPolygon } from '../geometry/convexPolygon.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { stairsMiddle } from '../rig/stairs.ts';
import { accessLane, beforeStairs, beyondEdge, laneBlocks, laneCrossing } from './accessLane.ts';
import type { CableRun } from './cables.ts';
import type { CablingFact } from './cablingFact.ts';
import { onDeck } from './deckFloor.ts';
import type { Obstacle } from './obstacle.ts';

/** K5: what lies where someone walks. */
export function crossingFacts(runs: readonly CableRun[], layout: Layout): CablingFact[] {
  const lane = accessLane(layout);
  const crossed = lane ? crossingFact(runs, layout, lane) : undefined;
  const told = new Set<Id>(crossed?.ids);
  const others = runs.filter(({ mic }) => !told.has(mic));
  const atStairs = layout.deck.stairs.flatMap((stairs, which): CablingFact[] => {
    const found = crossingFact(others, layout, beforeStairs(stairs, layout.deck));
    return found ? [{ ...found, code: 'stairs-crossed', which: String(which) }] : [];
  });
  return [...(crossed ? [{ ...crossed, code: 'lane-crossed' } as const] : []), ...atStairs];
}

/** All cables that lie in a strip, as one fact: a bundle is covered once. */
function crossingFact(
  runs: readonly CableRun[],
  layout: Layout,
  strip: ConvexPolygon<'deck'>,
): Omit<CablingFact, 'code'> | undefined {
  const crossings = runs.flatMap(({ mic, route }) => {
    const crossing = laneCrossing(strip, route);
    return crossing ? [{ mic, ...crossing }] : [];
  });
  const [first, ...more] = crossings;
  if (!first) return undefined;
  const longest = more.reduce((best, next) => (next.length > best.length ? next : best), first);
  const place = onDeck(layout, longest.place);
  return {
    ids: crossings.map(({ mic }) => mic),
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
