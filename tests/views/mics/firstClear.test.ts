import { describe, expect, it } from 'vitest';
import { newPiece } from '../../../src/layout/catalogue/defaults/newPiece.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { micGroups, offeredMics } from '../../../src/layout/catalogue/offered/offeredMics.ts';
import { addMic } from '../../../src/layout/edit/mics.ts';
import { addPiece } from '../../../src/layout/edit/pieces.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { firstClear } from '../../../src/views/mics/firstClear.ts';
import { unmiked } from '../../../src/views/mics/unmiked.ts';
import { sample } from '../words/sampleLayout.ts';

describe('the usual mic at the first clear place', () => {
  it('is found clear by the engine for every group of every starting kit', () => {
    for (const { make } of STARTING_KITS) {
      const bare = { ...make('kit'), mics: [] };
      for (const { name, hears } of micGroups(bare)) {
        const mic = firstClear(bare, offeredMics(bare, hears));
        expect(mic, `${bare.name}: ${name}`).toBeDefined();
        if (!mic) continue;
        const report = createAnalyst()(addMic(bare, mic));
        expect(report.clearances[0]?.verdict, `${bare.name}: ${name}`).toBe('clear');
      }
    }
  });

  it('keeps off the mics that are there: a second one for every group stands free of them too', () => {
    const analyse = createAnalyst();
    for (const { make } of STARTING_KITS) {
      const kit = make('kit');
      for (const { name, hears } of micGroups(kit)) {
        const mic = firstClear(kit, offeredMics(kit, hears));
        if (!mic) throw new Error(`${kit.name}: ${name} has no place`);
        const report = analyse(addMic(kit, mic));
        const row = report.clearances.find((each) => each.mic === mic.id);
        const inTheWay = report.findings.filter(
          ({ about, code }) =>
            about.length > 1 && about.includes(mic.id) && !code.startsWith('run-'),
        );
        expect([kit.name, name, row?.verdict, inTheWay]).toEqual([kit.name, name, 'clear', []]);
      }
    }
  });

  it('takes the first when it is clear, and nothing when nothing is offered', () => {
    const bare = { ...sample, mics: [] };
    const [first, ...rest] = sample.mics.filter((mic) => mic.mount.kind === 'clip');
    if (!first) throw new Error('the sample kit has clips');
    expect(firstClear(bare, [first, ...rest])).toBe(first);
    expect(firstClear(bare, [])).toBeUndefined();
  });

  it('prefers a clear place to a struck one, and of two struck ones the less struck', () => {
    const bare = { ...sample, mics: [] };
    const clip = sample.mics.find((mic) => mic.id === 'mic-rack-1');
    if (clip?.mount.kind !== 'clip') throw new Error('the sample kit has a clip on a rack tom');
    const at = (angle: number, reach: number) => ({
      ...clip,
      mount: { ...clip.mount, angle, reach } as typeof clip.mount,
    });
    const deep = at(270, 90);
    const shallow = at(270, 60);
    expect(firstClear(bare, [deep, clip])).toBe(clip);
    expect(firstClear(bare, [deep, shallow])).toBe(shallow);
  });
});

describe('what has no mic yet', () => {
  it('is no third overhead where two hear most cymbals', () => {
    for (const { make } of STARTING_KITS) {
      const kit = make('kit');
      const splash = addPiece(kit, newPiece('splash', kit));
      if (kit.mics.length === 0) continue;
      expect(unmiked(splash).map(({ name }) => name)).not.toContain('Overhead left');
      expect(unmiked(splash).map(({ name }) => name)).not.toContain('Overhead right');
    }
  });

  it('is every group of a bare kit, and one less with each usual mic', () => {
    for (const { make } of STARTING_KITS) {
      let layout = { ...make('kit'), mics: [] } as ReturnType<typeof make>;
      expect(unmiked(layout)).toEqual(micGroups(layout));
      for (const group of micGroups(layout)) {
        const mic = firstClear(layout, offeredMics(layout, group.hears));
        if (mic) layout = addMic(layout, mic);
        expect(unmiked(layout).map(({ name }) => name)).not.toContain(group.name);
      }
      expect(unmiked(layout)).toEqual([]);
    }
  });
});
