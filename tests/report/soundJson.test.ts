import { describe, expect, it } from 'vitest';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { createSoundReporter } from '../../src/report/sound.ts';
import { plain, soundJson } from '../../src/report/soundJson.ts';

describe('what is heard, as JSON', () => {
  it('holds numbers that are not finite as null, others to 0.001 and never as -0', () => {
    expect(
      plain({ far: Number.POSITIVE_INFINITY, none: Number.NEGATIVE_INFINITY, odd: Number.NaN }),
    ).toEqual({ far: null, none: null, odd: null });
    expect(plain([1.23456, -0.0001])).toEqual([1.235, 0]);
  });

  it('starts high-passes by the style of the layout', () => {
    const layout = largeKit('kit');
    const jazz = { ...layout, patch: { ...layout.patch, style: 'jazz' as const } };
    const of = (one: typeof layout) => soundJson(one, createAnalyst()(one));
    expect(of(jazz).style).toBe('jazz');
    expect(of(jazz).highPasses).not.toEqual(of(layout).highPasses);
    expect(of(jazz).close).toEqual(of(layout).close);
  });

  it.each(STARTING_KITS)('$name: comes back from text as it was, with every mic', (kit) => {
    const layout = kit.make('kit');
    const report = createAnalyst()(layout);
    const json = soundJson(layout, report);
    const sound = createSoundReporter().of(layout, report);
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(json.hearing.map(({ mic }) => mic)).toEqual(layout.mics.map(({ id }) => id));
    expect(json.close).toHaveLength(sound.close.length);
    expect(json.timing.rows).toHaveLength(sound.timing.rows.length);
    sound.close.forEach(({ isolation }, i) => {
      const held = json.close[i]?.isolation;
      if (Number.isFinite(isolation)) expect(held).toBeCloseTo(isolation, 2);
      else expect(held).toBeNull();
    });
  });
});
