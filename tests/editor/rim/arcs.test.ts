import { describe, expect, test } from 'vitest';
import { clearEnds, wholeArcs } from '../../../src/editor/rim/arcs.ts';
import { placeOnRing, ringOf } from '../../../src/report/ring.ts';
import { kit } from '../support.ts';

const arc = (verdict: 'clear' | 'tight' | 'struck', from: number, to: number) => ({
  verdict,
  from,
  to,
});

describe('the arcs of a ring', () => {
  test('one that runs over 0 degrees is one', () => {
    const arcs = [arc('clear', 0, 20), arc('struck', 20, 300), arc('clear', 300, 360)];
    expect(wholeArcs(arcs)).toEqual([arc('clear', -60, 20), arc('struck', 20, 300)]);
    const apart = [arc('clear', 0, 20), arc('struck', 20, 360)];
    expect(wholeArcs(apart)).toEqual(apart);
    expect(wholeArcs([arc('tight', 0, 360)])).toEqual([arc('tight', 0, 360)]);
  });

  test('the clear ones have two ends half a degree inside, a whole turn none', () => {
    const arcs = [arc('clear', 0, 20), arc('struck', 20, 300), arc('clear', 300, 360)];
    expect(clearEnds(arcs)).toEqual([300.5, 19.5]);
    expect(clearEnds([arc('clear', 0, 360)])).toEqual([]);
    expect(clearEnds([arc('tight', 0, 180), arc('struck', 180, 360)])).toEqual([]);
    expect(clearEnds([arc('clear', 0, 0.6), arc('tight', 0.6, 360)])).toEqual([0.3, 0.3]);
  });

  test('N4: at the ends of its clear arcs a clip is clear, and a degree outside them it is not', () => {
    for (const layout of [kit('five-piece-one-rack'), kit('large-kit')]) {
      for (const { id, mount } of layout.mics) {
        if (mount.kind !== 'clip') continue;
        const arcs = ringOf(layout, id)?.arcs ?? [];
        for (const end of clearEnds(arcs)) {
          expect(placeOnRing(layout, id, end)?.verdict).toBe('clear');
          const beside = [end - 1.5, end + 1.5].map((at) => placeOnRing(layout, id, at)?.verdict);
          expect(beside.some((verdict) => verdict !== 'clear')).toBe(true);
        }
      }
    }
  });
});
