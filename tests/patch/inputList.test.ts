import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { DEFAULT_PATCH } from '../../src/layout/patch.ts';
import { plainChannel } from '../../src/patch/channels/channel.ts';
import { festivalMics, inputList } from '../../src/patch/inputList.ts';
import { usualSplit } from '../../src/patch/splits/split.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { randomKit } from '../support/randomKit.ts';
import { demoWithMore, largeWithMore, patchWith, rowOf, rowsOf } from './scenes.ts';

describe('input list', () => {
  it('has one row for every mic, numbered from 1 in festival order, all as usual', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const rig = buildRig(layout);
        const rows = inputList(rig, DEFAULT_PATCH);
        expect(rows.map(({ mic }) => mic)).toEqual(festivalMics(rig));
        expect(rows.map(({ channel }) => channel)).toEqual(rows.map((_, index) => index + 1));
        for (const row of rows) {
          const { phantom, polarity, pad, insert, highPass } = row;
          for (const { value, start, byHand } of [phantom, polarity, pad, insert, highPass]) {
            expect([value, byHand]).toEqual([start, false]);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('R1: 48 V starts where the class needs it, and nowhere else', () => {
    for (const row of rowsOf(largeWithMore)) {
      expect([row.name, row.phantom.value, row.supplies]).toEqual([
        row.name,
        row.micClass.phantom,
        Number(row.micClass.phantom),
      ]);
    }
  });

  it('R1: a row behind a transformer, or that is no end of the split, starts without 48 V', () => {
    const split = usualSplit('split', 'mic-hi-hat', 'Monitors');
    const withLegs = (legs: typeof split.legs) =>
      rowOf(rowsOf(demoWithMore, patchWith({ splits: [{ ...split, legs }] })), 'mic-hi-hat');
    expect(withLegs(split.legs).phantom.start).toBe(true);
    const swapped = split.legs.map((leg) => ({
      ...leg,
      connection: leg.to === 'channel' ? ('isolated' as const) : ('direct' as const),
    }));
    expect(withLegs(swapped).phantom.start).toBe(false);
    expect(withLegs(split.legs.filter(({ to }) => to !== 'channel')).phantom.start).toBe(false);
  });

  it('R2: polarity of the mic under the snare, a range and a start of high-pass from the acoustics', () => {
    const rig = buildRig(largeWithMore);
    const { highPasses } = createAcoustics()(largeWithMore, rig);
    const rows = inputList(rig, DEFAULT_PATCH, highPasses);
    expect(rowOf(rows, 'mic-snare-bottom').polarity.value).toBe('reversed');
    expect(rowOf(rows, 'mic-snare').polarity.value).toBe('normal');
    for (const { highPass, highPassRange, mic } of rows) {
      const range = highPasses.find((each) => each.mic === mic);
      expect(highPassRange).toEqual({ low: range?.low, high: range?.high });
      expect(highPass.value).toBeGreaterThanOrEqual(range?.low ?? Number.POSITIVE_INFINITY);
      expect(highPass.value).toBeLessThanOrEqual(range?.high ?? 0);
    }
    expect(rowOf(rowsOf(largeWithMore), 'mic-snare').highPass.value).toBeNull();
  });

  it('shows what is set by hand, beside where one would start', () => {
    const set = {
      ...plainChannel('mic-hi-hat', 'mic-hi-hat'),
      number: 17,
      phantom: false,
      polarity: 'reversed' as const,
      highPass: 0,
      pad: 20,
      insert: 'gate' as const,
      notes: 'Stand borrowed',
    };
    const rows = rowsOf(demoWithMore, patchWith({ channels: [set] }));
    expect(rowOf(rows, 'mic-hi-hat')).toMatchObject({
      channel: 17,
      phantom: { value: false, start: true, byHand: true },
      supplies: 0,
      polarity: { value: 'reversed', start: 'normal', byHand: true },
      highPass: { value: 0, start: null, byHand: true },
      pad: { value: 20, start: 0, byHand: true },
      insert: { value: 'gate', start: 'none', byHand: true },
      notes: 'Stand borrowed',
    });
  });

  it('R3: 48 V of one row of a mic reaches it for all its rows', () => {
    const channels = [
      { ...plainChannel('mic-hi-hat', 'mic-hi-hat'), phantom: false },
      plainChannel('hat-2', 'mic-hi-hat'),
    ];
    const rows = rowsOf(demoWithMore, patchWith({ channels }));
    expect(rows).toHaveLength(demoWithMore.mics.length + 1);
    expect(rowOf(rows, 'mic-hi-hat').supplies).toBe(1);
    expect(rowOf(rows, 'hat-2').supplies).toBe(1);
  });
});

it('tells a mic’s further channels from its first, and which numbers were set by hand', () => {
  const channels = [
    { ...plainChannel('kick-b', 'mic-kick-in'), number: 33 },
    plainChannel('kick-c', 'mic-kick-in'),
  ];
  const rows = rowsOf(demoWithMore, patchWith({ channels }));
  const kick = rows.filter(({ mic }) => mic === 'mic-kick-in');
  const name = demoWithMore.mics.find(({ id }) => id === 'mic-kick-in')?.name;
  expect(kick.map((row) => [row.name, row.channel, row.isNumbered])).toEqual([
    [name, 1, false],
    [`${name} (2)`, 33, true],
    [`${name} (3)`, 34, false],
  ]);
});
