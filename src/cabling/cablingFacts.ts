import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { boxIsOnDeck, obstacleOfBox } from './box.ts';
import type { CableCount } from './cableCount.ts';
import type { CableRun, Cables } from './cables.ts';
import type { CablingCode, CablingFact } from './cablingFact.ts';
import { onDeck } from './deckFloor.ts';
import { blockFacts, createCrossingFacts, stairsFacts } from './laneFacts.ts';
import { type Obstacle, standsIn } from './obstacle.ts';

/**
 * What is wrong with the cables of a layout, in the layout's order.
 *
 * K1 run-no-way: no way keeps clear of everything; the mic, then what its cable passes.
 * K2 stock-missing: `count` more cables of a `length` have to be brought, for these mics, beside the `listed` cables of the stock list;
 *    run-joined: two cables are joined (`longer`, `shorter`) for what one alone does not reach.
 * K3 run-unplugged; input-beyond-box with `input` and `inputs`; input-twice with all mics on the `input`.
 * K4 more-mics-than-inputs: more mics are placed than the box has inputs, plugged or not; `mics` and `inputs`.
 * K5 lane-crossed: cables lie in the access lane (A1, A2), the longest of them by `length`. stairs-crossed: they lie before
 *    the foot or the head of stairs (A4), but for those that the lane names already.
 * K6 box-in-obstacle: the box really overlaps what stands on the deck; those pieces and mics. The player's foot space counts.
 * K7 box-off-deck: the box stands beside a deck that is higher than the stage floor; cables go over its edge, by `drop`.
 * K8 lane-blocked: what stands in the access lane (A3), the box with no id; it leaves it sideways by `overlap`.
 * K9 stairs-off-edge: stairs reach beyond the end of their edge, by `beyond`.
 * K10 run-signal: run and multicore together are so long that the mic's signal shows it (E4): `length`, `levelLoss` and
 *    `lossAt20k` in dB.
 */
export const cablingFacts: TellCabling = (layout, cables) => createCablingFacts()(layout, cables);

export type TellCabling = (layout: Layout, cables: Cables) => readonly CablingFact[];

/** The same of one layout after another; what no change touches is remembered. */
export function createCablingFacts(): TellCabling {
  const crossingFacts = createCrossingFacts();
  return (layout, { runs, stock, obstacles }) => [
    ...runs.flatMap((run) => runFacts(run, layout)),
    ...stock.missing.map((missing) => missingFact(missing, runs, layout)),
    ...inputsUsedTwice(runs),
    ...tooManyMics(layout),
    ...crossingFacts(runs, layout),
    ...blockFacts(layout, obstacles),
    ...stairsFacts(layout),
    ...boxFacts(layout, obstacles),
  ];
}

function runFacts(run: CableRun, layout: Layout): CablingFact[] {
  const { mic, input, through, total, carried, electrical } = run;
  const { box } = layout;
  const start = run.route[0];
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
  const [longer, shorter] = carried;
  if (longer !== undefined && shorter !== undefined) {
    fact('run-joined', { needed: total, longer, shorter });
  }
  if (electrical.matters.length > 0) {
    const { levelLoss, lossAt20k } = electrical;
    fact('run-signal', { length: total + box.tail, levelLoss, lossAt20k });
  }
  if (input === null) fact('run-unplugged', {});
  else if (input > box.inputs) fact('input-beyond-box', { input, inputs: box.inputs });
  return facts;
}

function missingFact(
  { length, count }: CableCount,
  runs: readonly CableRun[],
  { cabling }: Layout,
): CablingFact {
  const ids = runs.filter(({ missing }) => missing.includes(length)).map(({ mic }) => mic);
  const listed = cabling.stock.reduce((sum, cables) => sum + cables.count, 0);
  const numbers = { count, length, listed };
  return { code: 'stock-missing', ids, which: String(length), place: undefined, numbers };
}

function inputsUsedTwice(runs: readonly CableRun[]): CablingFact[] {
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

function boxFacts(layout: Layout, obstacles: readonly Obstacle[]): CablingFact[] {
  const place = onDeck(layout, layout.box);
  if (!boxIsOnDeck(layout)) {
    const drop = layout.deck.height;
    return drop > 0 ? [{ code: 'box-off-deck', ids: [], place, numbers: { drop } }] : [];
  }
  const box = obstacleOfBox(layout).body;
  const met = obstacles.filter((obstacle) => obstacle.owner !== null && standsIn(box, obstacle));
  const ids = [...new Set(met.flatMap(({ owner }) => (owner === null ? [] : [owner])))];
  return ids.length > 0 ? [{ code: 'box-in-obstacle', ids, place, numbers: {} }] : [];
}
