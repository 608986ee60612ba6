import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { setTick } from '../../src/patch/pull/ticks.ts';
import { usualSplit } from '../../src/patch/splits/split.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { patchReport } from '../../src/report/patch.ts';
import { patchJson } from '../../src/report/patchJson.ts';
import { swapIn } from '../../src/report/swapOffer.ts';
import { randomKit } from '../support/randomKit.ts';

const analyse = createAnalyst();
const jsonOf = (layout: Layout) => patchJson(layout, analyse(layout));
const [first] = STARTING_KITS.map((kit) => kit.make('kit'));
if (!first) throw new Error('there is a starting kit');
const withPatch = (change: Partial<Layout['patch']>): Layout => ({
  ...first,
  patch: { ...first.patch, ...change },
});

describe('the patch as JSON', () => {
  it.each(STARTING_KITS)(
    '$name: comes back from text as it was, and says what the screens say',
    (kit) => {
      const layout = kit.make('kit');
      const report = analyse(layout);
      const json = patchJson(layout, report);
      const patch = patchReport(layout, report);
      expect(JSON.parse(JSON.stringify(json))).toEqual(json);
      expect(json.inputs.map(({ id, channel, input }) => [id, channel, input])).toEqual(
        patch.rows.map(({ id, channel, input }) => [id, channel, input]),
      );
      expect(json.lineCheck.map(({ id, state }) => [id, state])).toEqual(
        patch.steps.map(({ row, state }) => [row.id, state]),
      );
      expect(json.pull.map(({ total }) => total)).toEqual(patch.strike.map(({ total }) => total));
      expect(json.swaps.map(({ drum, steps }) => [drum, steps.length])).toEqual(
        layout.pieces.filter(isDrum).map(({ id }) => [id, swapIn(report, id)?.steps.length]),
      );
    },
  );

  it('holds nothing that JSON can’t, for any kit', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const json = jsonOf(layout);
        expect(JSON.parse(JSON.stringify(json))).toEqual(json);
      }),
      { numRuns: 20 },
    );
  });

  it('says who gives 48 V at a split, what all legs load and what each loses', () => {
    const [mic] = first.mics;
    if (!mic) throw new Error('the kit has mics');
    const [split] = jsonOf(withPatch({ splits: [usualSplit('split', mic.id, 'Monitors')] })).splits;
    expect(split?.load).toBe(1000);
    expect(split?.legs.map(({ to, connection }) => [to, connection])).toEqual([
      ['channel', 'direct'],
      ['Monitors', 'isolated'],
    ]);
    // 20 lg((2000/2150)/(1000/1150)), worked by hand.
    expect(split?.legs.map(({ lost }) => lost)).toEqual([0.586, 0.586]);
  });

  it('holds a split without legs, one of a split and one of nothing', () => {
    const none = { ...usualSplit('a', 'nothing', 'X'), legs: [] };
    const json = jsonOf(withPatch({ splits: [none, usualSplit('b', 'a', 'Y')] }));
    expect(json.splits.map(({ of, load }) => [of, load])).toEqual([
      ['nothing', null],
      ['a', 1000],
    ]);
  });

  it('keeps what went out and is no longer on the list, as missing', () => {
    const gone = { kind: 'mic', which: 'gone' } as const;
    const { ticks } = setTick(first.patch, gone, { out: 2, back: 1 });
    expect(jsonOf(withPatch({ ticks })).pull.at(-1)).toEqual({
      ...gone,
      needed: 0,
      spare: 0,
      total: 0,
      out: 2,
      back: 1,
      missing: 1,
    });
  });
});
