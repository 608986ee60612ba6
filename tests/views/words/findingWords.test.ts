import { describe, expect, it } from 'vitest';
import type { ClearanceRow, Finding, FindingCode } from '../../../src/report/report.ts';
import { findingWords } from '../../../src/views/words/findingWords.ts';
import { sample, snareRow } from './sampleLayout.ts';

const finding = (code: FindingCode, rest: Partial<Finding> = {}): Finding => ({
  key: code,
  code,
  severity: 'warn',
  about: ['mic-snare', 'rack-1'],
  place: undefined,
  numbers: {},
  ...rest,
});

/** Every code once: a code that is added to the report does not compile here until it is listed. */
const everyCode: Readonly<Record<FindingCode, true>> = {
  'mic-struck': true,
  'mic-tight': true,
  'mic-beyond-stand': true,
  'mic-far-away': true,
  'mic-not-close': true,
  'mic-in-shell': true,
  'mic-in-player': true,
  'mic-near-player': true,
  'mic-in-pedal': true,
  'piece-not-played': true,
  'boom-through-piece': true,
  'mic-against-stand': true,
  'mic-against-mic': true,
  'piece-in-piece': true,
  'feet-overlap': true,
  'base-off-deck': true,
  'piece-off-deck': true,
  'piece-out-of-reach': true,
  'stand-may-tip': true,
  'clip-metal-rim': true,
  'run-no-way': true,
  'run-joined': true,
  'run-signal': true,
  'stock-missing': true,
  'run-unplugged': true,
  'input-twice': true,
  'input-beyond-box': true,
  'more-mics-than-inputs': true,
  'box-in-obstacle': true,
  'box-off-deck': true,
  'lane-crossed': true,
  'lane-blocked': true,
  'stairs-crossed': true,
  'stairs-off-edge': true,
  'phantom-missing': true,
  'ribbon-with-phantom': true,
  'phantom-not-needed': true,
  'input-two-channels': true,
  'channel-twice': true,
  'split-of-split': true,
  'split-of-nothing': true,
  'mic-split-twice': true,
  'split-few-legs': true,
  'split-direct-legs': true,
  'split-channel-legs': true,
  'split-phantom-none': true,
  'split-phantom-several': true,
  'split-phantom-isolated': true,
  'split-lift-direct': true,
  'split-plain-y': true,
  'split-load-low': true,
  'mic-move-wished': true,
  'stands-move-wished': true,
  'lane-move-wished': true,
  'sign-off-stale': true,
  'sign-off-reworked': true,
  'sign-off-withheld': true,
  'sign-off-broken': true,
};
const codes = Object.keys(everyCode) as readonly FindingCode[];

describe('a finding in words', () => {
  it('has a title, a detail and a next step for every code, with or without its numbers', () => {
    for (const code of codes) {
      for (const about of [['mic-snare', 'rack-1'], ['mic-snare'], []]) {
        const text = findingWords(finding(code, { about }), sample);
        for (const words of [text.title, text.detail, text.next]) {
          expect(words, code).toMatch(/^[A-Z0-9].*[^.\s]/);
          expect(words, code).not.toMatch(/undefined|NaN|null|Infinity/);
        }
      }
    }
  });

  it('names the move of a struck mic when it is given the clearances', () => {
    const text = findingWords(finding('mic-struck', { about: ['mic-snare'] }), sample, [
      snareRow(-12, 'struck'),
    ]);
    expect(text.title).toBe('Snare mic would be struck');
    expect(text.detail).toBe('12 mm too close: right stick, travelling from Snare to Ride.');
  });

  it('tells a clip to be turned and a stand to be moved', () => {
    const next = (mic: string) =>
      findingWords(finding('mic-struck', { about: [mic] }), sample).next;
    expect(next('mic-rack-1')).toContain('round the rim');
    expect(next('mic-snare')).toContain('The base can stay');
  });

  it('says its numbers in the units of the layout and where it is', () => {
    const text = findingWords(
      finding('mic-beyond-stand', {
        about: ['mic-snare'],
        numbers: { beyond: 41.2 },
        place: { x: -70, y: 440, z: 900 },
      }),
      { ...sample, units: 'in' },
    );
    expect(text.detail).toBe(
      'The mast and boom fall short by 1.7 in. Where: over Snare, 35.4 in above the deck.',
    );
    expect(
      findingWords(finding('stand-may-tip', { numbers: { factor: 1.234 } }), sample).detail,
    ).toBe('Its base holds 1.2 times the pull of boom and mic; 1.5 is wanted.');
  });

  it('a stand that falls by itself tips over, and no rounding says that it stands', () => {
    const falls = finding('stand-may-tip', { severity: 'stop', numbers: { factor: 0.97 } });
    expect(findingWords(falls, sample)).toMatchObject({
      title: expect.stringMatching(/^The stand of .* tips over$/),
      detail: expect.stringContaining('holds 0.9 times'),
    });
  });

  it('says which arm, which clip and how many share an input', () => {
    const words = (code: FindingCode, rest: Partial<Finding>) =>
      findingWords(finding(code, rest), sample);
    const reach = (about: string, numbers: Record<string, number>) =>
      words('piece-out-of-reach', { about: [about], numbers });
    expect(reach('crash-1', { beyond: 29.4, left: 29.4 })).toMatchObject({
      detail: 'The left arm falls short by 30 mm, trunk lean included.',
      next: 'Bring it nearer, let only the right hand play it, or check who plays: stature, seat, trunk lean and stick.',
    });
    expect(reach('ride', { beyond: 12, right: 12 }).next).not.toContain('hand play it');
    const both = reach('crash-1', { beyond: 41, right: 12, left: 41 });
    expect(both.detail).toBe(
      'The right arm falls short by 12 mm and the left by 41 mm, trunk lean included.',
    );
    expect(both.next).not.toContain('hand play it');
    expect(words('boom-through-piece', { about: ['mic-rack-1', 'rack-2'] }).title).toBe(
      'The clip of Rack 1 goes through Rack tom 2',
    );
    const atHardware = (mic: string) => words('mic-against-stand', { about: [mic, 'rack-2'] }).next;
    expect(atHardware('mic-rack-1')).toContain('round the rim');
    expect(atHardware('mic-snare')).toContain('Move the base');
    expect(
      words('input-twice', { about: ['mic-snare', 'mic-rack-1'], numbers: { input: 3 } }).detail,
    ).toBe('Snare mic and Rack 1 are on the same input.');
    expect(words('box-off-deck', { about: [], numbers: { drop: 300 } }).detail).toContain(
      'the edge of the deck, 300 mm high',
    );
  });

  it('offers a larger stand only where one serves', () => {
    const next = (serving: number) =>
      findingWords(finding('mic-beyond-stand', { numbers: { beyond: 40, serving } }), sample).next;
    expect(next(2)).toContain('larger stand');
    expect(next(0)).not.toContain('larger');
    expect(next(0)).toMatch(/lower the mic/i);
    expect(next(0)).toMatch(/base nearer/);
  });

  it('never says to lower a mic that is too low, or to bring a base nearer that is too near', () => {
    const next = (numbers: Finding['numbers']) =>
      findingWords(finding('mic-beyond-stand', { numbers: { beyond: 40, ...numbers } }), sample);
    expect(next({ serving: 0, rise: -400 }).next).toBe('Raise the mic, or bring the base nearer.');
    expect(next({ serving: 0, rise: 400 }).next).toBe('Lower the mic, or bring the base nearer.');
    expect(next({ serving: 2, rise: -400 }).next).toContain('lower stand');
    const near = next({ serving: 0, rise: 0, folded: 40 });
    expect(near.detail).toBe('The boom is too long for it by 40 mm.');
    expect(near.next).not.toContain('nearer');
  });

  it('names all that a clip can do: round the rim, its height, its reach', () => {
    const clip = sample.mics.find(({ mount }) => mount.kind === 'clip');
    const { next } = findingWords(finding('mic-struck', { about: [clip?.id ?? ''] }), sample);
    expect(next).toMatch(/^Find a clear spot, or .*round the rim.*lower.*back toward the rim/);
  });

  it('says which way round the rim a clip turns to more room, where that is known', () => {
    const clip = sample.mics.find(({ mount }) => mount.kind === 'clip')?.id ?? '';
    const turn = { way: 'clockwise', by: 15 } as const;
    const { next } = findingWords(finding('mic-tight', { about: [clip] }), sample, [], turn);
    expect(next).toMatch(/^Turn the clip round the rim clockwise, seen from above: 15° on it has/);
    expect(next).toMatch(/Or agree with the player that this is enough\.$/);
  });

  it('what a leg or a cymbal meets, or a boom or mast, is told another way out than the mic itself', () => {
    const clip = sample.mics.find(({ mount }) => mount.kind === 'clip')?.id ?? '';
    const next = (mic: string, nearest: Partial<NonNullable<ClearanceRow['nearest']>>) => {
      const row = snareRow(-15, 'struck');
      if (!row.nearest) throw new Error('the row has a place');
      const rows = [{ ...row, mic, nearest: { ...row.nearest, ...nearest } }];
      return findingWords(finding('mic-struck', { about: [mic] }), sample, rows).next;
    };
    const leg = { kind: 'leg', foot: 'left', pedal: null } as const;
    expect(next(clip, { movement: leg })).toBe(
      'Find a clear spot, or turn the clip round the rim to where no leg is.',
    );
    const swing = { kind: 'swing', cymbal: 'crash-1', at: 0.5 } as const;
    expect(next(clip, { movement: swing })).toMatch(/away from the cymbal/);
    expect(next('mic-snare', { micPart: 'body' })).toMatch(/^Move the mic away/);
    expect(next('mic-snare', { micPart: 'boom' })).toMatch(/boom passes free/);
    expect(next('mic-snare', { micPart: 'mast' })).toMatch(/^Move the base away/);
  });

  it('says what to do about feet by what they are in the way of', () => {
    const next = (...about: string[]) =>
      findingWords(finding('feet-overlap', { about }), sample).next;
    const onDisc = {
      ...sample,
      mics: sample.mics.map((mic) =>
        mic.id === 'mic-snare' && mic.mount.kind === 'stand'
          ? { ...mic, mount: { ...mic.mount, stand: 'roundBoom' as const } }
          : mic,
      ),
    };
    expect(next('mic-snare', 'hi-hat')).toMatch(/^Turn one tripod/);
    expect(next('mic-snare', 'kick')).toMatch(/legs of Snare mic .*Kick/);
    expect(next('kick', 'crash-1')).toMatch(/legs of Crash.*Kick/);
    expect(next('mic-snare', 'kick')).not.toContain('one tripod');
    expect(next('mic-snare', 'pedal-kick')).toMatch(/pedal/i);
    expect(next('mic-snare', 'pedal-kick')).not.toContain('one tripod');
    const disc = findingWords(finding('feet-overlap', { about: ['mic-snare', 'hi-hat'] }), onDisc);
    expect(disc.next).toMatch(/disc of Snare mic/);
    const lone = findingWords(finding('feet-overlap', { about: ['mic-snare', 'kick'] }), onDisc);
    expect(lone.next).not.toMatch(/[Tt]urn/);
  });

  it('never rounds a shortfall to nothing', () => {
    const text = findingWords(finding('mic-beyond-stand', { numbers: { beyond: 0.2 } }), sample);
    expect(text.detail).toContain('1 mm');
  });

  it('cautions where a stand can fall', () => {
    expect(findingWords(finding('stand-may-tip'), sample).next).toMatch(/Counterweight or sandbag/);
    expect(findingWords(finding('clip-metal-rim'), sample).next).toMatch(/owner/);
  });
});
