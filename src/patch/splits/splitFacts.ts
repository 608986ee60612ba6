import type { Id } from '../../layout/fields.ts';
import type { MicClass } from '../../layout/mics/micClass.ts';
import type { Leg, Split } from '../../layout/patch.ts';
import type { PatchFact, SplitCode } from '../fact.ts';
import { P48, shortCircuit } from '../phantom.ts';
import type { Ohms } from '../quantities.ts';
import { splitLoad } from './splitLoad.ts';
import { gives, suppliesReaching, voltsThrough } from './supply.ts';

/** A mic as far as splits are concerned. */
export interface SplitMic {
  readonly id: Id;
  readonly micClass: Pick<MicClass, 'phantom'>;
  /** Whether its row of the input list gives 48 V. */
  readonly phantom: boolean;
}

/** S12 A mic should see at least five times its source impedance (common practice, from memory). */
const LEAST_LOAD_RATIO = 5;

type Fact = PatchFact<SplitCode>;

/**
 * What is wrong with the splits, in their order; the split and its mic are the ids.
 *
 * S1 split-of-split: it takes its signal from another split. Refused: nothing else is said about it.
 * S2 split-of-nothing: it takes its signal from nothing that is there.
 * S3 mic-split-twice: the mic has an earlier split; nothing else is said about this one.
 * S4 split-few-legs: fewer than two `legs`; nothing else is said about it.
 * S5 split-direct-legs: a transformer split has one direct leg, not `direct`; a plain Y has none that is isolated: `isolated`.
 * S6 split-channel-legs: more than one leg goes to the mic's own channel.
 * S7 split-phantom-none: the mic needs 48 V and no end gives it.
 * S8 split-phantom-several: more than one supply reaches the mic; `supplies`, and what they leave it (`volts`) and drive into a
 *    short (`short`, mA; one alone: `shortOfOne`).
 * S9 split-phantom-isolated: an end behind the transformer gives 48 V: it does not reach the mic; `leg` from 1, `reaching` supplies.
 * S10 split-lift-direct: pin 1 is open on a direct leg; `leg` from 1. On an isolated leg it may be.
 * S11 split-plain-y: it is a plain Y: what it does; `load` in ohms, `lost` in dB (the most that a leg loses), `legs`.
 * S12 split-load-low: all legs together load the mic with less than five times its source impedance; `load`, `source`, `lost`.
 */
export function splitFacts(
  splits: readonly Split[],
  mics: readonly SplitMic[],
  source: Ohms,
): readonly Fact[] {
  const byId = new Map(mics.map((mic) => [mic.id, mic]));
  return splits.flatMap((split, index): readonly Fact[] => {
    const { id, of, legs } = split;
    if (splits.some((other) => other.id === of)) {
      return [
        fact('split-of-split', [id, of], ['loadAdds', 'supplyUnclear', 'blocksDirectCurrent']),
      ];
    }
    const mic = byId.get(of);
    if (!mic) return [fact('split-of-nothing', [id], ['sourceMissing'])];
    const ids = [id, of];
    if (splits.slice(0, index).some((earlier) => earlier.of === of)) {
      return [fact('mic-split-twice', ids, ['loadAdds', 'supplyUnclear'])];
    }
    if (legs.length < 2) {
      return [fact('split-few-legs', ids, ['nothingSplit'], { legs: legs.length })];
    }
    return [
      ...legFacts(split, ids),
      ...phantomFacts(split, mic, ids),
      ...liftFacts(split, mic, ids),
      ...loadFacts(split, source, ids),
    ];
  });
}

const fact = (
  code: SplitCode,
  ids: Fact['ids'],
  reasons: Fact['reasons'],
  numbers: Fact['numbers'] = {},
): Fact => ({ code, ids, reasons, numbers });

const isDirect = ({ connection }: Leg): boolean => connection === 'direct';

function legFacts({ kind, legs }: Split, ids: Fact['ids']): readonly Fact[] {
  const facts: Fact[] = [];
  const direct = legs.filter(isDirect).length;
  const isolated = legs.length - direct;
  if (kind === 'transformer' && direct !== 1) {
    facts.push(fact('split-direct-legs', ids, ['oneDirect'], { direct }));
  }
  if (kind === 'y' && isolated > 0) {
    facts.push(fact('split-direct-legs', ids, ['noTransformer'], { isolated }));
  }
  const channel = legs.filter(({ to }) => to === 'channel').length;
  if (channel > 1) facts.push(fact('split-channel-legs', ids, ['oneChannel'], { channel }));
  return facts;
}

function phantomFacts(split: Split, mic: SplitMic, ids: Fact['ids']): readonly Fact[] {
  const { phantom } = mic;
  const { legs } = split;
  const supplies = suppliesReaching(split, phantom);
  const facts: Fact[] = [];
  if (mic.micClass.phantom && !legs.some((leg) => gives(leg, phantom))) {
    facts.push(fact('split-phantom-none', ids, ['needsSupply']));
  }
  if (supplies > 1) {
    const numbers = {
      supplies,
      volts: voltsThrough(split, phantom),
      short: shortCircuit(P48, supplies),
      shortOfOne: shortCircuit(P48),
    };
    facts.push(fact('split-phantom-several', ids, ['suppliesInParallel'], numbers));
  }
  legs.forEach((leg, index) => {
    if (isDirect(leg) || !gives(leg, phantom)) return;
    const numbers = { leg: index + 1, reaching: supplies };
    facts.push(fact('split-phantom-isolated', ids, ['blocksDirectCurrent'], numbers));
  });
  return facts;
}

function liftFacts({ legs }: Split, { phantom }: SplitMic, ids: Fact['ids']): readonly Fact[] {
  return legs.flatMap((leg, index): readonly Fact[] => {
    if (!isDirect(leg) || !leg.lifted) return [];
    const reasons = gives(leg, phantom)
      ? (['phantomReturn', 'screenOpen'] as const)
      : (['screenOpen'] as const);
    return [fact('split-lift-direct', ids, reasons, { leg: index + 1 })];
  });
}

function loadFacts({ kind, legs }: Split, source: Ohms, ids: Fact['ids']): readonly Fact[] {
  const { load, lost: each } = splitLoad(
    source,
    legs.map(({ impedance }) => impedance),
  );
  const lost = Math.max(...each);
  const facts: Fact[] = [];
  if (kind === 'y') {
    const reasons = ['whoSupplies', 'loadAdds', 'groundsJoined'] as const;
    facts.push(fact('split-plain-y', ids, reasons, { load, lost, legs: legs.length }));
  }
  if (load < LEAST_LOAD_RATIO * source) {
    facts.push(fact('split-load-low', ids, ['loadedMic'], { load, source, lost }));
  }
  return facts;
}
