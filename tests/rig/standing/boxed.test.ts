import { describe, expect, it } from 'vitest';
import { type Bounds, boundsOfCapsule, joined } from '../../../src/geometry/bounds.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { baseCapsules } from '../../../src/rig/feet.ts';
import { boxedMic, boxedPiece } from '../../../src/rig/standing/boxed.ts';
import { kits } from '../kits.ts';

const holds = (outer: Bounds, inner: Bounds): boolean =>
  JSON.stringify(joined([outer, inner])) === JSON.stringify(joined([outer]));

describe('boxes of what stands on the deck', () => {
  const things = kits.flatMap((layout) => {
    const { mics, pieces } = buildRig(layout);
    return [...mics.map(boxedMic), ...pieces.map(boxedPiece)];
  });

  it('hold every leg and disc of their feet, which are all in the box of the whole', () => {
    const feet = things.flatMap(({ onDeck, bounds }) =>
      onDeck.feet.map((one) => ({ ...one, whole: bounds })),
    );
    expect(feet.length).toBeGreaterThan(100);
    for (const { footprint, bounds, whole } of feet) {
      for (const leg of baseCapsules(footprint)) {
        expect(holds(bounds, boundsOfCapsule(leg))).toBe(true);
      }
      expect(holds(whole, bounds)).toBe(true);
    }
  });

  it('hold every corner of what lies on it', () => {
    const outlines = things.flatMap(({ onDeck }) => onDeck.outlines);
    expect(outlines.length).toBeGreaterThan(10);
    for (const { outline, bounds } of outlines) {
      for (const { x, y } of outline) {
        const corner = { x, y, z: 0 };
        expect(holds(bounds, { low: corner, high: corner })).toBe(true);
      }
    }
  });
});
