import { describe, expect, it } from 'vitest';
import { changePatch } from '../../../src/layout/edit/patch.ts';
import { addSplit } from '../../../src/patch/splits/editSplits.ts';
import { usualSplit } from '../../../src/patch/splits/split.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { patchReport } from '../../../src/report/patch.ts';
import { shakerFeed, withShakerFeed } from '../../../src/views/sound/shaker.ts';
import { first, kit, sound } from './sampleSound.ts';

const mic = first(first(sound.kicks).mics).mic;

describe('a seat shaker’s feed', () => {
  it('is a split of the kick mic, whose other leg is isolated, with no mic and no input more', () => {
    expect(shakerFeed(kit, [mic])).toBeUndefined();
    const fed = withShakerFeed(kit, mic);
    expect(shakerFeed(fed, [mic])).toMatchObject({
      mic,
      leg: { to: 'other', name: 'Seat shaker', connection: 'isolated', phantom: false },
    });
    expect(fed.mics).toBe(kit.mics);
    const rows = (layout: typeof kit) => patchReport(layout, createAnalyst()(layout)).rows.length;
    expect(rows(fed)).toBe(rows(kit));
  });

  it('is one more leg where the mic is split already', () => {
    const split = changePatch(kit, (patch) => addSplit(patch, usualSplit('s', mic, 'Monitors')));
    const fed = withShakerFeed(split, mic);
    expect(fed.patch.splits.map(({ legs }) => legs.length)).toEqual([3]);
    expect(shakerFeed(fed, [mic])?.mic).toBe(mic);
  });

  it('is not seen in a split of another mic', () => {
    const fed = withShakerFeed(kit, mic);
    expect(shakerFeed(fed, ['another'])).toBeUndefined();
  });
});
