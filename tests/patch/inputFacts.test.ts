import { describe, expect, it } from 'vitest';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import { DEFAULT_PATCH } from '../../src/layout/patch.ts';
import { plainChannel } from '../../src/patch/channels/channel.ts';
import { inputFacts } from '../../src/patch/inputFacts.ts';
import { usualSplit } from '../../src/patch/splits/split.ts';
import { kits } from '../rig/kits.ts';
import { demoWithMore, patchWith, rowsOf } from './scenes.ts';

const plugged: Layout = {
  ...demoWithMore,
  mics: demoWithMore.mics.map((mic, index) => ({ ...mic, input: index + 1 })),
};
const change = (id: string, to: Partial<Mic>): Layout => ({
  ...plugged,
  mics: plugged.mics.map((mic) => (mic.id === id ? { ...mic, ...to } : mic)),
});
const factsOf = (layout: Layout, patch = DEFAULT_PATCH) => inputFacts(rowsOf(layout, patch));
const set = (id: string, phantom: boolean) => ({ ...plainChannel(id, id), phantom });

describe('facts about the input list', () => {
  it('are none on any starting kit', () => {
    for (const kit of [...kits, plugged]) expect(factsOf(kit)).toEqual([]);
  });

  it('I1: a condenser and a plate without 48 V', () => {
    const channels = [set('mic-hi-hat', false), set('mic-kick-plate', false)];
    expect(factsOf(plugged, patchWith({ channels }))).toEqual(
      ['mic-kick-plate', 'mic-hi-hat'].map((mic) => ({
        code: 'phantom-missing',
        reasons: ['needsSupply'],
        ids: [mic],
        numbers: {},
      })),
    );
  });

  it('I1 is left to the facts of a split where there is one', () => {
    const splits = [usualSplit('split', 'mic-hi-hat', 'Monitors')];
    const channels = [set('mic-hi-hat', false)];
    expect(factsOf(plugged, patchWith({ channels, splits }))).toEqual([]);
  });

  it('I2: a passive ribbon with 48 V; an active one needs it', () => {
    const ribbon = change('mic-overhead-hi-hat-side', { micClass: 'ribbon' });
    expect(factsOf(ribbon)).toEqual([]);
    const patch = patchWith({ channels: [set('mic-overhead-hi-hat-side', true)] });
    const [fact, ...others] = factsOf(ribbon, patch);
    expect(others).toEqual([]);
    expect(fact?.code).toBe('ribbon-with-phantom');
    expect(fact?.ids).toEqual(['mic-overhead-hi-hat-side']);
    const [own] = rowsOf(ribbon).filter(({ micClass }) => micClass.id === 'ribbon');
    if (!own) throw new Error('a ribbon was expected');
    const active: Layout = {
      ...change('mic-overhead-hi-hat-side', { micClass: 'active' }),
      ownClasses: [{ ...own.micClass, id: 'active', phantom: true }],
    };
    expect(factsOf(active, patch)).toEqual([]);
  });

  it('I2: also where another end of a split gives it', () => {
    const ribbon = change('mic-overhead-hi-hat-side', { micClass: 'ribbon' });
    const usual = usualSplit('split', 'mic-overhead-hi-hat-side', 'Monitors');
    const legs = usual.legs.map((leg) =>
      leg.to === 'other' ? { ...leg, phantom: true, connection: 'direct' as const } : leg,
    );
    const codes = factsOf(ribbon, patchWith({ splits: [{ ...usual, kind: 'y', legs }] }));
    expect(codes.map(({ code }) => code)).toEqual(['ribbon-with-phantom']);
  });

  it('I3: a dynamic with 48 V', () => {
    const facts = factsOf(plugged, patchWith({ channels: [set('mic-snare', true)] }));
    expect(facts.map(({ code, ids }) => [code, ids])).toEqual([
      ['phantom-not-needed', ['mic-snare']],
    ]);
  });

  it('I4: two channels on one input', () => {
    const channels = [plainChannel('kick-2', 'mic-kick-in')];
    expect(factsOf(plugged, patchWith({ channels }))).toEqual([
      {
        code: 'input-two-channels',
        reasons: ['levelsTied'],
        ids: ['mic-kick-in'],
        numbers: { input: 1, channels: 2 },
      },
    ]);
  });

  it('I5: a box input used twice, by all its mics, in the order of the list', () => {
    const twice = change('mic-snare', { input: 1 });
    expect(factsOf(twice)).toEqual([
      {
        code: 'input-twice',
        reasons: ['signalsMix'],
        ids: ['mic-kick-in', 'mic-snare'],
        numbers: { input: 1 },
      },
    ]);
  });

  it('I6: one channel number on two rows', () => {
    const channels = [{ ...plainChannel('mic-snare', 'mic-snare'), number: 2 }];
    const [first] = factsOf(plugged, patchWith({ channels }));
    expect(first).toEqual({
      code: 'channel-twice',
      reasons: ['oneHeardAtATime'],
      ids: ['mic-kick-plate', 'mic-snare'],
      numbers: { channel: 2 },
    });
  });

  it('I7: an unplugged mic, once, however many channels it has; two unplugged mics share no input', () => {
    const channels = [plainChannel('snare-2', 'mic-snare-bottom')];
    const facts = factsOf(demoWithMore, patchWith({ channels }));
    expect(facts.map(({ code, ids }) => [code, ids])).toEqual([
      ['run-unplugged', ['mic-snare-bottom']],
      ['run-unplugged', ['mic-cowbell']],
    ]);
  });
});
