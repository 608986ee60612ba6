import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Layout } from '../../src/layout/layout.ts';
import { pickupsOf } from '../../src/patch/pickup.ts';
import { reversedMics } from '../../src/patch/polarity.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { kits } from '../rig/kits.ts';
import { randomKit } from '../support/randomKit.ts';
import { demoWithMore, largeWithMore, snareBottom } from './scenes.ts';

const reversedIn = (layout: Layout): readonly string[] =>
  [...reversedMics(pickupsOf(buildRig(layout)))].toSorted();

test('A4: the mic under the snare and the one at the beater are reversed, no other', () => {
  expect(reversedIn(demoWithMore)).toEqual(['mic-snare-bottom']);
  expect(reversedIn(largeWithMore)).toEqual(['mic-kick-beater', 'mic-snare-bottom']);
});

test('A4: no starting kit has a mic on the far side of a head', () => {
  expect(kits.flatMap(reversedIn)).toEqual([]);
});

test('A4: alone on its drum, a mic under it starts as plugged', () => {
  const alone = { ...demoWithMore, mics: [snareBottom] };
  expect(reversedIn(alone)).toEqual([]);
});

test('A4: each reversed mic has one of the same drum that starts the other way and is not reversed', () => {
  fc.assert(
    fc.property(randomKit, (layout) => {
      const pickups = pickupsOf(buildRig(layout));
      const reversed = reversedMics(pickups);
      for (const { placed, own, first } of pickups) {
        if (!reversed.has(placed.mic.id)) continue;
        const partners = pickups.filter(
          (other) =>
            other.own?.id === own?.id &&
            other.first !== undefined &&
            other.first !== first &&
            !reversed.has(other.placed.mic.id),
        );
        expect(partners).not.toEqual([]);
      }
    }),
    { numRuns: 100 },
  );
});
