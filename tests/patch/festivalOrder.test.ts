import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { festivalMics } from '../../src/patch/inputList.ts';
import { pickupsOf } from '../../src/patch/pickup.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { randomKit } from '../support/randomKit.ts';
import { demoWithMore, largeWithMore } from './scenes.ts';

const orderOf = (layout: Layout): readonly string[] => festivalMics(buildRig(layout));

describe('festival order', () => {
  // Common practice, no source; the two cases were ordered by hand.
  it('O1 to O3: the demo with a cowbell mic and one under the snare', () => {
    expect(orderOf(demoWithMore)).toEqual([
      'mic-kick-in',
      'mic-kick-plate',
      'mic-snare',
      'mic-snare-bottom',
      'mic-hi-hat',
      'mic-rack-1',
      'mic-rack-2',
      'mic-floor-tom',
      'mic-cowbell',
      'mic-overhead-hi-hat-side',
      'mic-overhead-floor-tom-side',
    ]);
  });

  it('O1 to O3: the large kit, rack toms 8, 10, 12 in, ride before china, the beater mic after those inside', () => {
    expect(orderOf(largeWithMore)).toEqual([
      'mic-kick-in',
      'mic-kick-plate',
      'mic-kick-beater',
      'mic-snare',
      'mic-snare-condenser',
      'mic-snare-bottom',
      'mic-side-snare',
      'mic-hi-hat',
      'mic-rack-1',
      'mic-rack-2',
      'mic-rack-3',
      'mic-floor-tom-1',
      'mic-floor-tom-2',
      'mic-ride',
      'mic-china',
      'mic-overhead-hi-hat-side',
      'mic-overhead-floor-tom-side',
      'mic-overhead-centre',
    ]);
  });

  it('O2: of toms alike across the shallower comes first, wherever they are listed', () => {
    const deeper = (id: string, depth: number): Layout => ({
      ...demoWithMore,
      pieces: demoWithMore.pieces.map((piece) =>
        piece.kind === 'rackTom'
          ? { ...piece, diameter: 305, depth: piece.id === id ? depth : 230 }
          : piece,
      ),
    });
    const toms = (layout: Layout) => orderOf(layout).filter((id) => id.startsWith('mic-rack'));
    expect(toms(deeper('rack-1', 250))).toEqual(['mic-rack-2', 'mic-rack-1']);
    expect(toms(deeper('rack-2', 250))).toEqual(['mic-rack-1', 'mic-rack-2']);
  });

  it('O3: top before bottom, inside before the beater, wherever they are listed', () => {
    const mics = largeWithMore.mics.toReversed();
    const order = orderOf({ ...largeWithMore, mics });
    const only = (...ids: readonly string[]) => order.filter((id) => ids.includes(id));
    expect(only('mic-snare-bottom', 'mic-snare')).toEqual(['mic-snare', 'mic-snare-bottom']);
    expect(only('mic-kick-beater', 'mic-kick-in')).toEqual(['mic-kick-in', 'mic-kick-beater']);
  });

  it('keeps every mic once, in groups that follow each other', () => {
    const groups = [
      ['kick'],
      ['snare'],
      ['hiHat'],
      ['rackTom'],
      ['floorTom'],
      ['percussion'],
      ['ride'],
      ['cymbal'],
      ['overhead'],
      ['none'],
    ].flat();
    fc.assert(
      fc.property(randomKit, (layout) => {
        const rig = buildRig(layout);
        const order = festivalMics(rig);
        expect(order.toSorted()).toEqual(layout.mics.map(({ id }) => id).toSorted());
        const sources = new Map(
          pickupsOf(rig).map(({ placed, source }) => [placed.mic.id, source]),
        );
        const ranks = order.map((id) => groups.indexOf(sources.get(id) ?? ''));
        expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
      }),
      { numRuns: 50 },
    );
  });

  it('does not depend on the side on which the kit is set up', () => {
    for (const layout of [demoWithMore, largeWithMore]) {
      expect(orderOf(mirrorKit(layout))).toEqual(orderOf(layout));
    }
  });

  it('does not depend on the order in which mics are listed, except among overheads and what shares piece and place', () => {
    const isAlone = (id: string) =>
      !id.startsWith('mic-overhead') && !/mic-(kick-(in|plate)|snare|snare-condenser)$/.test(id);
    const alone = orderOf(largeWithMore).filter(isAlone);
    expect(alone.length).toBeGreaterThan(8);
    fc.assert(
      fc.property(fc.shuffledSubarray(largeWithMore.mics, { minLength: 18 }), (mics) => {
        expect(orderOf({ ...largeWithMore, mics }).filter(isAlone)).toEqual(alone);
      }),
      { numRuns: 20 },
    );
  });
});
