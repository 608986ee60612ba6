import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Leg, Split } from '../../../src/layout/patch.ts';
import { usualLeg, usualSplit } from '../../../src/patch/splits/split.ts';
import { type SplitMic, splitFacts } from '../../../src/patch/splits/splitFacts.ts';

const condenser: SplitMic = { id: 'hat', micClass: { phantom: true }, phantom: true };
const dynamic: SplitMic = { id: 'kick', micClass: { phantom: false }, phantom: false };
const MICS = [condenser, dynamic];

const ofHat = usualSplit('split', 'hat', 'Monitors');
const [channelLeg, otherLeg] = ofHat.legs;
if (!channelLeg || otherLeg?.to !== 'other') throw new Error('a usual split has two legs');
const monitors = otherLeg;
const withLegs = (...legs: Leg[]): Split => ({ ...ofHat, legs });
const y = withLegs(channelLeg, { ...monitors, connection: 'direct' });
const plainY: Split = { ...y, kind: 'y' };

const factsOf = (splits: readonly Split[], mics = MICS) => splitFacts(splits, mics, 150);
const codesOf = (splits: readonly Split[], mics = MICS) =>
  factsOf(splits, mics).map(({ code }) => code);
const only = (split: Split, mics = MICS) => {
  const [fact, ...others] = factsOf([split], mics);
  expect(others).toEqual([]);
  return fact;
};

// Direct leg, isolated leg, lift, Y: the sources named in section 5 of the reference notes.
describe('facts about splits', () => {
  it('the usual split is right, for a mic that needs 48 V and for one that does not', () => {
    expect(factsOf([ofHat, usualSplit('shaker', 'kick', 'Seat shaker')])).toEqual([]);
  });

  it('one more usual leg hangs as the kind has it; a third input of 2 kilohm loads a mic of 150 ohm too much', () => {
    expect(codesOf([withLegs(...ofHat.legs, usualLeg('transformer', 'Recorder'))])).toEqual([
      'split-load-low',
    ]);
    const wider: Split = { ...plainY, legs: [...plainY.legs, usualLeg('y', 'Recorder')] };
    expect(codesOf([wider])).not.toContain('split-direct-legs');
  });

  it('an isolated leg may be lifted', () => {
    expect(factsOf([withLegs(channelLeg, { ...monitors, lifted: true })])).toEqual([]);
  });

  it('48 V may come from elsewhere when that is the direct leg', () => {
    const swapped = withLegs(
      { ...channelLeg, connection: 'isolated' },
      { ...monitors, connection: 'direct', phantom: true },
    );
    expect(factsOf([swapped], [{ ...condenser, phantom: false }])).toEqual([]);
  });

  it('S1: a split of a split is refused, in either order, with its reasons', () => {
    const second = usualSplit('second', 'split', 'Recorder');
    for (const splits of [
      [ofHat, second],
      [second, ofHat],
    ]) {
      expect(factsOf(splits)).toEqual([
        {
          code: 'split-of-split',
          ids: ['second', 'split'],
          reasons: ['loadAdds', 'supplyUnclear', 'blocksDirectCurrent'],
          numbers: {},
        },
      ]);
    }
  });

  it('S1: splits of each other, and of itself, are refused and end', () => {
    const [a, b] = [usualSplit('a', 'b', 'x'), usualSplit('b', 'a', 'x')];
    expect(codesOf([a, b])).toEqual(['split-of-split', 'split-of-split']);
    expect(codesOf([usualSplit('a', 'a', 'x')])).toEqual(['split-of-split']);
  });

  it('S2: a split of nothing that is there', () => {
    expect(only(usualSplit('split', 'gone', 'x'))).toMatchObject({
      code: 'split-of-nothing',
      ids: ['split'],
    });
  });

  it('S3: a mic split twice', () => {
    const again = usualSplit('again', 'hat', 'Recorder');
    expect(factsOf([ofHat, again]).map(({ code, ids }) => [code, ids])).toEqual([
      ['mic-split-twice', ['again', 'hat']],
    ]);
  });

  it('S4: fewer than two legs', () => {
    expect(only(withLegs())).toMatchObject({ code: 'split-few-legs', numbers: { legs: 0 } });
    expect(only(withLegs(channelLeg))?.code).toBe('split-few-legs');
  });

  it('S5: a transformer split with no or two direct legs; a Y with an isolated one', () => {
    const none = withLegs({ ...channelLeg, connection: 'isolated' }, monitors);
    const facts = factsOf([none], [{ ...condenser, micClass: { phantom: false }, phantom: false }]);
    expect(facts).toMatchObject([{ code: 'split-direct-legs', numbers: { direct: 0 } }]);
    expect(only(y)).toMatchObject({ code: 'split-direct-legs', numbers: { direct: 2 } });
    const mixed: Split = { ...ofHat, kind: 'y' };
    expect(factsOf([mixed])[0]).toMatchObject({
      code: 'split-direct-legs',
      reasons: ['noTransformer'],
      numbers: { isolated: 1 },
    });
  });

  it('S6: two legs to one channel', () => {
    const twice = withLegs(channelLeg, { ...channelLeg, connection: 'isolated' }, monitors);
    expect(codesOf([twice])).toContain('split-channel-legs');
  });

  it('S7: no end gives the 48 V that the mic needs', () => {
    expect(only(ofHat, [{ ...condenser, phantom: false }])?.code).toBe('split-phantom-none');
  });

  it('S8: two supplies reach the mic; at 10 mA 31 V are left, 28.2 mA flow into a short', () => {
    const both: Split = {
      ...plainY,
      legs: [channelLeg, { ...monitors, connection: 'direct', phantom: true }],
    };
    const fact = factsOf([both]).find(({ code }) => code === 'split-phantom-several');
    expect(fact?.numbers.supplies).toBe(2);
    // By hand: 48 - 0.010 * 6800 / 4 = 31.
    expect(fact?.numbers.volts).toBeCloseTo(31, 9);
    expect(fact?.numbers.short).toBeCloseTo(28.24, 2);
    expect(fact?.numbers.shortOfOne).toBeCloseTo(14.12, 2);
  });

  it('S9: 48 V behind the transformer does not reach the mic, alone or beside another', () => {
    const behind = withLegs(channelLeg, { ...monitors, phantom: true });
    expect(only(behind)).toMatchObject({
      code: 'split-phantom-isolated',
      numbers: { leg: 2, reaching: 1 },
    });
    expect(only(behind, [{ ...condenser, phantom: false }])).toMatchObject({
      code: 'split-phantom-isolated',
      numbers: { leg: 2, reaching: 0 },
    });
  });

  it('S10: a lift on the direct leg; with 48 V on it the return is lifted too', () => {
    const lifted = withLegs({ ...channelLeg, lifted: true }, monitors);
    expect(only(lifted)).toMatchObject({
      code: 'split-lift-direct',
      reasons: ['phantomReturn', 'screenOpen'],
      numbers: { leg: 1 },
    });
    const ofKick = { ...lifted, of: 'kick' };
    expect(only(ofKick)?.reasons).toEqual(['screenOpen']);
  });

  it('S11: a plain Y says what it does: 1 kilohm and 0.59 dB for two inputs of 2 kilohm', () => {
    const fact = only(plainY);
    expect(fact?.code).toBe('split-plain-y');
    expect(fact?.reasons).toEqual(['whoSupplies', 'loadAdds', 'groundsJoined']);
    expect(fact?.numbers.load).toBeCloseTo(1000, 9);
    expect(fact?.numbers.lost).toBeCloseTo(0.586, 3);
    expect(fact?.numbers.legs).toBe(2);
  });

  it('S12: less than five times the source impedance', () => {
    const loaded = (impedance: number) =>
      codesOf([withLegs({ ...channelLeg, impedance }, { ...monitors, impedance })]);
    expect(loaded(1500)).toEqual([]);
    expect(loaded(1499)).toEqual(['split-load-low']);
  });
});

describe('laws of splits', () => {
  const leg: fc.Arbitrary<Leg> = fc.oneof(
    fc.record({
      to: fc.constant('channel' as const),
      connection: fc.constantFrom('direct' as const, 'isolated' as const),
      lifted: fc.boolean(),
      impedance: fc.integer({ min: 200, max: 20_000 }),
    }),
    fc.record({
      to: fc.constant('other' as const),
      name: fc.string(),
      connection: fc.constantFrom('direct' as const, 'isolated' as const),
      phantom: fc.boolean(),
      lifted: fc.boolean(),
      impedance: fc.integer({ min: 200, max: 20_000 }),
    }),
  );
  const split: fc.Arbitrary<Split> = fc.record({
    id: fc.constantFrom('a', 'b', 'c'),
    of: fc.constantFrom('hat', 'kick', 'a', 'b', 'gone'),
    kind: fc.constantFrom('transformer' as const, 'y' as const),
    legs: fc.array(leg, { maxLength: 4 }),
  });
  const splits = fc.uniqueArray(split, { maxLength: 3, selector: ({ id }) => id });
  const mics = fc.tuple(fc.boolean(), fc.boolean()).map(([hat, kick]) => [
    { ...condenser, phantom: hat },
    { ...dynamic, phantom: kick },
  ]);

  it('no splits crash it; every number is finite; every split is accounted for once or is right', () => {
    fc.assert(
      fc.property(splits, mics, (some, two) => {
        for (const { ids, reasons, numbers } of factsOf(some, two)) {
          expect(some.map(({ id }) => id)).toContain(ids[0]);
          expect(reasons.length).toBeGreaterThan(0);
          expect(Object.values(numbers).every(Number.isFinite)).toBe(true);
        }
      }),
    );
  });

  it('a transformer split without facts about 48 V has, for a mic that needs it, exactly one supply, on the direct leg', () => {
    fc.assert(
      fc.property(fc.array(leg, { minLength: 2, maxLength: 4 }), fc.boolean(), (legs, phantom) => {
        const mic = { ...condenser, phantom };
        const wrong = codesOf([withLegs(...legs)], [mic]).some((code) =>
          ['split-direct-legs', 'split-channel-legs'].includes(code),
        );
        fc.pre(!wrong);
        const about48 = codesOf([withLegs(...legs)], [mic]).filter((code) =>
          code.startsWith('split-phantom'),
        );
        const given = legs.filter((each) => (each.to === 'channel' ? phantom : each.phantom));
        const isRight = given.length === 1 && given[0]?.connection === 'direct';
        expect(about48.length === 0).toBe(isRight);
      }),
    );
  });

  it('lifting is wrong on direct legs and only there', () => {
    fc.assert(
      fc.property(fc.array(leg, { minLength: 2, maxLength: 4 }), (legs) => {
        const lifted = factsOf([withLegs(...legs)])
          .filter(({ code }) => code === 'split-lift-direct')
          .map(({ numbers }) => numbers.leg);
        const expected = legs.flatMap((each, index) =>
          each.lifted && each.connection === 'direct' ? [index + 1] : [],
        );
        expect(lifted).toEqual(expected);
      }),
    );
  });
});
