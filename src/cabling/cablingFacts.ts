import { overlaps } from '../geometry/convexPolygon.ts';
import type { Vec2, Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { toKit } from '../rig/deckFrame.ts';
import { accessLane, laneBlocks, laneCrossing } from './accessLane.ts';
import { boxIsOnDeck, obstacleOfBox } from './box.ts';
import type { CableRouting } from './routeRuns.ts';
import type { Run } from './run.ts';

/** What can be wrong with the cables or the box. */
export type CablingCode =
  | 'run-no-way'
  | 'run-no-stock'
  | 'run-stock-taken'
  | 'run-unplugged'
  | 'input-twice'
  | 'input-beyond-box'
  | 'more-mics-than-inputs'
  | 'lane-crossed'
  | 'lane-blocked'
  | 'box-in-obstacle'
  | 'box-off-deck';

/** A fact for the report to judge and the views to put into words. */
export interface CablingFact {
  readonly code: CablingCode;
  /** Mics and pieces it is about, the main one first. */
  readonly ids: readonly Id[];
  /** On the deck, kit frame; undefined where it has no place. */
  readonly place: Vec3 | undefined;
  /** Lengths in mm, counts and input numbers. */
  readonly numbers: Readonly<Record<string, number>>;
}

/**
 * What is wrong with the cables of a layout, in the layout's order.
 *
 * K1 run-no-way: no way keeps clear of everything; the mic, then what its cable passes.
 * K2 run-no-stock: no stock length carried reaches; run-stock-taken: those that reach are all taken by other runs (R4); `needed` and
 *    the `longest` carried (0: none).
 * K3 run-unplugged; input-beyond-box with `input` and `inputs`; input-twice with all mics on the `input`.
 * K4 more-mics-than-inputs: more mics are placed than the box has inputs, plugged or not; `mics` and `inputs`.
 * K5 lane-crossed: a cable lies in the access lane, by `length` (A1, A2).
 * K6 box-in-obstacle: the box really overlaps what stands on the deck; those pieces and mics. The player's foot space counts.
 * K7 box-off-deck: the box stands beside a deck that is higher than the stage floor; cables go over its edge, by `drop`.
 * K8 lane-blocked: what stands in the access lane (A3), the box with no id; it leaves it sideways by `overlap`.
 */
export function cablingFacts(layout: Layout, routing: CableRouting): readonly CablingFact[] {
  const { runs } = routing;
  return [
    ...runs.flatMap((run) => runFacts(run, layout)),
    ...inputsUsedTwice(runs),
    ...tooManyMics(layout),
    ...laneFacts(runs, layout),
    ...blockFacts(layout, routing),
    ...boxFacts(layout, routing),
  ];
}

function runFacts(run: Run, layout: Layout): CablingFact[] {
  const { mic, input, through, stock, total } = run;
  const { box, cabling } = layout;
  const [start] = run.route;
  const facts: CablingFact[] = [];
  const fact = (
    code: CablingCode,
    numbers: CablingFact['numbers'],
    others: readonly Id[] = [],
  ): void => {
    const place = start && onDeck(layout, start);
    facts.push({ code, ids: [mic, ...others.filter((id) => id !== mic)], place, numbers });
  };
  if (through.length > 0) fact('run-no-way', {}, through);
  if (stock === null) {
    const carried = cabling.stock.filter(({ count }) => count > 0).map(({ length }) => length);
    const longest = Math.max(0, ...carried);
    fact(longest >= total ? 'run-stock-taken' : 'run-no-stock', { needed: total, longest });
  }
  if (input === null) fact('run-unplugged', {});
  else if (input > box.inputs) fact('input-beyond-box', { input, inputs: box.inputs });
  return facts;
}

function inputsUsedTwice(runs: readonly Run[]): CablingFact[] {
  const mics = new Map<number, Id[]>();
  for (const { input, mic } of runs) {
    if (input !== null) mics.set(input, [...(mics.get(input) ?? []), mic]);
  }
  return [...mics]
    .filter(([, ids]) => ids.length > 1)
    .map(([input, ids]) => ({ code: 'input-twice', ids, place: undefined, numbers: { input } }));
}

function tooManyMics({ mics, box: { inputs } }: Layout): CablingFact[] {
  if (mics.length <= inputs) return [];
  const numbers = { mics: mics.length, inputs };
  return [{ code: 'more-mics-than-inputs', ids: [], place: undefined, numbers }];
}

function laneFacts(runs: readonly Run[], layout: Layout): CablingFact[] {
  const lane = accessLane(layout);
  if (!lane) return [];
  return runs.flatMap(({ mic, route }): CablingFact[] => {
    const crossing = laneCrossing(lane, route);
    if (!crossing) return [];
    const { place, length } = crossing;
    return [
      { code: 'lane-crossed', ids: [mic], place: onDeck(layout, place), numbers: { length } },
    ];
  });
}

const blockFacts = (layout: Layout, { obstacles }: CableRouting): CablingFact[] =>
  laneBlocks(layout, obstacles).map(({ owner, place, overlap }) => ({
    code: 'lane-blocked',
    ids: owner === null ? [] : [owner],
    place: onDeck(layout, place),
    numbers: { overlap },
  }));

function boxFacts(layout: Layout, { obstacles }: CableRouting): CablingFact[] {
  const place = onDeck(layout, layout.box);
  if (!boxIsOnDeck(layout)) {
    const drop = layout.deck.height;
    return drop > 0 ? [{ code: 'box-off-deck', ids: [], place, numbers: { drop } }] : [];
  }
  const box = obstacleOfBox(layout).body;
  const met = obstacles.filter(({ owner, body }) => owner !== null && overlaps(body, box));
  const ids = [...new Set(met.flatMap(({ owner }) => (owner === null ? [] : [owner])))];
  return ids.length > 0 ? [{ code: 'box-in-obstacle', ids, place, numbers: {} }] : [];
}

function onDeck({ deck }: Layout, p: Vec2<'deck'>): Vec3 {
  const { x, y } = toKit(deck, p);
  return { x, y, z: 0 };
}
