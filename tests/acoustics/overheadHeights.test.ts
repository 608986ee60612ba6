import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { moveMicTip } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece, kits } from '../rig/kits.ts';
import { micAt, only, sceneOf, standAt } from './scenes.ts';

const overheadsOf = (layout: Layout) =>
  only(createAcoustics()(layout, buildRig(layout)).overheads ?? undefined);
const found = overheadsOf(fivePiece);
const { rows, enough } = found.heights;

/** The kit with all its overheads raised to a height over the highest cymbal. */
function raisedTo(height: number): Layout {
  let layout = fivePiece;
  for (const { mic } of found.mics) {
    const mount = layout.mics.find(({ id }) => id === mic)?.mount;
    if (mount?.kind !== 'stand') throw new TypeError('overheads stand');
    layout = moveMicTip(layout, mic, { ...mount.tip, z: (found.top ?? 0) + height });
  }
  return layout;
}

describe('H34 overheads by height', () => {
  it('from 400 to 1500 mm over the highest cymbal', () => {
    expect([rows[0]?.height, rows.at(-1)?.height]).toEqual([400, 1500]);
    const heights = rows.map(({ height }) => height);
    expect(heights).toEqual(heights.toSorted((p, q) => p - q));
  });

  it.each([400, 700, 1100, 1500])(
    'tells what the mics then hear when they are raised to %i mm',
    (height) => {
      const row = only(rows.find((one) => one.height === height));
      const there = overheadsOf(raisedTo(height));
      expect(there.together.spread).toBeCloseTo(row.spread, 6);
      expect(there.together.overWash).toBeCloseTo(row.overWash, 6);
      expect(there.balance?.level).toBeCloseTo(row.balance ?? Number.NaN, 6);
      expect(there.mics.map(({ spread }) => spread.toFixed(6))).toEqual(
        row.mics.map(({ spread }) => spread.toFixed(6)),
      );
    },
  );

  it('higher is less over the wash, and a lone cymbal has no spread', () => {
    for (const layout of kits.filter(({ mics }) => mics.length > 0)) {
      const over = overheadsOf(layout).heights.rows.map(({ overWash }) => overWash);
      for (const [i, level] of over.entries()) {
        if (i > 0) expect(level).toBeLessThan(over[i - 1] ?? 0);
      }
    }
    const crash = only(fivePiece.pieces.find(({ kind }) => kind === 'crash'));
    const alone = overheadsOf(
      sceneOf([crash], [micAt('mic', [crash.id], standAt([0, 900, 1900], [0, -90]))]),
    );
    expect(alone.heights.enough).toBeNull();
    expect(alone.heights.rows.every(({ spread }) => spread === 0)).toBe(true);
  });
});

describe('H35 where more height stops helping', () => {
  it('no greater height makes the spread smaller by more than half a dB, and the next lower one is not enough', () => {
    const at = rows.findIndex(({ height }) => height === enough);
    const gainFrom = (i: number) =>
      (rows[i]?.spread ?? 0) - Math.min(...rows.slice(i).map(({ spread }) => spread));
    expect(at).toBeGreaterThan(0);
    expect(gainFrom(at)).toBeLessThanOrEqual(0.5);
    expect(gainFrom(at - 1)).toBeGreaterThan(0.5);
  });
});
