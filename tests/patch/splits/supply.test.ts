import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Leg, Split } from '../../../src/layout/patch.ts';
import { usualSplit } from '../../../src/patch/splits/split.ts';
import { rowSupplies, suppliesReaching, voltsThrough } from '../../../src/patch/splits/supply.ts';

const usual = usualSplit('split', 'hat', 'Monitors');
const phantomLeg = (connection: Leg['connection'], phantom: boolean): Leg => ({
  to: 'other',
  name: 'Monitors',
  connection,
  phantom,
  lifted: false,
  impedance: 2000,
});
const legs = fc.array(
  fc.tuple(fc.constantFrom('direct' as const, 'isolated' as const), fc.boolean()),
  { maxLength: 5 },
);

it('only supplies at the ends of direct legs reach the mic', () => {
  fc.assert(
    fc.property(legs, fc.boolean(), (some, channel) => {
      const split: Split = { ...usual, legs: some.map((one) => phantomLeg(...one)) };
      const reaching = some.filter(([connection, phantom]) => connection === 'direct' && phantom);
      expect(suppliesReaching(split, channel)).toBe(reaching.length);
      expect(voltsThrough(split, channel) > 0).toBe(reaching.length > 0);
    }),
  );
});

// Reference values: 14 V at 10 mA from one 48 V supply.
it('the channel gives 48 V where its row says so', () => {
  expect(voltsThrough(usual, true)).toBeCloseTo(14, 9);
  expect(voltsThrough(usual, false)).toBe(0);
});

it('a row starts with 48 V only where the mic needs it and it would reach the mic', () => {
  const behind: Split = {
    ...usual,
    legs: usual.legs.map((leg) => ({ ...leg, connection: 'isolated' })),
  };
  expect(rowSupplies(true, undefined)).toBe(true);
  expect(rowSupplies(true, usual)).toBe(true);
  expect(rowSupplies(true, behind)).toBe(false);
  expect(rowSupplies(true, { ...usual, legs: usual.legs.slice(1) })).toBe(false);
  for (const split of [undefined, usual, behind]) expect(rowSupplies(false, split)).toBe(false);
});
