import { describe, expect, it } from 'vitest';
import { MIC_CLASSES } from '../../../src/layout/catalogue/micClasses.ts';
import { checkReferences } from '../../../src/layout/references.ts';
import { choiceOf, mountChoices, reclass, remount } from '../../../src/views/mics/mountChoices.ts';
import { sample } from '../words/sampleLayout.ts';

const mountIn = (layout: typeof sample, id: string) => {
  const mic = layout.mics.find((each) => each.id === id);
  if (!mic) throw new Error(`${id} is in the layout`);
  return mic.mount;
};

describe('how a mic can be held', () => {
  it('offers a clip on drums alone, and the kick for plates in a kick', () => {
    for (const mic of sample.mics) {
      const source = sample.pieces.find((piece) => piece.id === mic.hears[0]);
      const choices = mountChoices(sample, mic);
      expect(choices[0]).toBe(choiceOf(mic.mount));
      if (choices.includes('clip')) expect(source?.kind).toMatch(/snare|rackTom|floorTom/);
      if (choices.includes('plateInKick')) expect(source?.kind).toBe('kick');
    }
  });

  it('holds every mic every way that it offers', () => {
    for (const mic of sample.mics) {
      for (const choice of mountChoices(sample, mic)) {
        const held = remount(sample, mic.id, choice);
        expect(choiceOf(mountIn(held, mic.id)), `${mic.name}: ${choice}`).toBe(choice);
        expect(held.mics.map(({ id }) => id)).toEqual(sample.mics.map(({ id }) => id));
      }
    }
  });

  it('keeps base and tip when one stand is changed for another', () => {
    const before = mountIn(sample, 'mic-snare');
    expect(mountIn(remount(sample, 'mic-snare', 'tripodMedium'), 'mic-snare')).toEqual({
      ...before,
      stand: 'tripodMedium',
    });
  });

  it('leaves a sound layout whatever class a mic is given', () => {
    for (const mic of sample.mics) {
      for (const { id } of MIC_CLASSES) {
        const changed = reclass(sample, mic.id, id);
        expect(checkReferences(changed), `${mic.name}: ${id}`).toEqual([]);
        expect(changed.mics.find((each) => each.id === mic.id)?.micClass).toBe(id);
      }
    }
  });

  it('lays a boundary plate in the kick, and does not leave it on a stand', () => {
    const kickIn = sample.mics.find((mic) => mic.name === 'Kick in');
    if (!kickIn) throw new Error('the sample kit has a mic in the kick');
    expect(mountIn(reclass(sample, kickIn.id, 'boundary-plate'), kickIn.id).kind).toBe(
      'plateInKick',
    );
  });
});
