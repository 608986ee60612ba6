import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createClearances, createMotion, verdictOf } from '../../src/clearance/clearances.ts';
import { TOLERANCE } from '../../src/clearance/searchBounds.ts';
import { distance } from '../../src/geometry/vector.ts';
import { mirrorKit, mirrorPiece } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isStruck } from '../../src/layout/pieces/piece.ts';
import { buildRig, createRigBuilder } from '../../src/rig/buildRig.ts';
import { startingKit } from './kits.ts';

type Edit = (layout: Layout, pick: number, by: number) => Layout;
const at = <T>(list: readonly T[], pick: number): T | undefined => list[pick % list.length];

/** Edits as users make them; all share with the layout before what they do not touch. */
const EDITS: readonly Edit[] = [
  (layout, pick, by) => {
    const gone = at(layout.pieces.filter(isStruck), pick);
    return {
      ...layout,
      pieces: layout.pieces.map((piece) =>
        piece === gone && isStruck(piece) ? { ...piece, x: piece.x + by } : piece,
      ),
    };
  },
  (layout, pick, by) => {
    const moved = at(layout.mics, pick);
    return {
      ...layout,
      mics: layout.mics.map((mic) =>
        mic === moved && mic.mount.kind === 'stand'
          ? { ...mic, mount: { ...mic.mount, tip: { ...mic.mount.tip, x: mic.mount.tip.x + by } } }
          : mic,
      ),
    };
  },
  (layout, pick, by) => {
    const moved = at(layout.mics, pick);
    return {
      ...layout,
      mics: layout.mics.map((mic) =>
        mic === moved && mic.mount.kind === 'clip'
          ? { ...mic, mount: { ...mic.mount, angle: (mic.mount.angle + by + 360) % 360 } }
          : mic,
      ),
    };
  },
  (layout, _, by) => ({ ...layout, player: { ...layout.player, stature: 1750 + by } }),
  (layout, _, by) => ({ ...layout, player: { ...layout.player, strokeHeight: 305 - by } }),
  (layout, _, by) => ({ ...layout, margin: 50 + by / 10 }),
  (layout, pick) => ({
    ...layout,
    mics: layout.mics.filter((mic) => mic !== at(layout.mics, pick)),
  }),
  (layout, pick) => mirrorPiece(layout, at(layout.pieces, pick)?.id ?? ''),
  (layout) => mirrorKit(layout),
  (layout) => layout,
];
const edit = fc.record({
  kind: fc.nat({ max: EDITS.length - 1 }),
  pick: fc.nat({ max: 99 }),
  by: fc.integer({ min: -150, max: 150 }),
  /** Taken back afterwards, as undo does. */
  undone: fc.boolean(),
});

describe('clearances that are remembered', () => {
  it('equal fresh ones after any sequence of edits and undos', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 8 }), (edits) => {
        const remembered = createClearances();
        const rigOf = createRigBuilder();
        let layout = startingKit('five-piece-two-racks');
        for (const { kind, pick, by, undone } of edits) {
          const before = layout;
          layout = EDITS[kind]?.(layout, pick, by) ?? layout;
          for (const shown of undone ? [layout, before] : [layout]) {
            expect(remembered(shown, rigOf(shown).mics)).toEqual(
              createClearances()(shown, buildRig(shown).mics),
            );
            layout = shown;
          }
        }
      }),
      { numRuns: 25 },
    );
  }, 240_000);

  it('in a hurry are as near to the exact minimum, however long it lasts, and fresh ones at rest', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 8 }), fc.boolean(), (edits, rests) => {
        const remembered = createClearances();
        const rigOf = createRigBuilder();
        let layout = startingKit('five-piece-two-racks');
        remembered(layout, rigOf(layout).mics);
        for (const { kind, pick, by, undone } of edits) {
          const before = layout;
          layout = EDITS[kind]?.(layout, pick, by) ?? layout;
          for (const shown of undone ? [layout, before] : [layout]) {
            const fresh = createClearances()(shown, buildRig(shown).mics);
            const hurried = remembered(shown, rigOf(shown).mics, true);
            expect(hurried.map(({ mic }) => mic)).toEqual(fresh.map(({ mic }) => mic));
            for (const [k, { clearance, verdict, nearest }] of hurried.entries()) {
              const exact = fresh[k]?.clearance ?? Number.NaN;
              expect(Math.abs(clearance - exact)).toBeLessThanOrEqual(TOLERANCE + 1e-9);
              expect(verdict).toBe(verdictOf(clearance, shown.margin));
              if (!nearest) throw new Error('all of these kits are played');
              // What is said to come nearest is as far away as is said.
              const gap = distance(nearest.onMic, nearest.onMoving);
              if (clearance > 1) expect(gap).toBeCloseTo(clearance + TOLERANCE, 6);
            }
            if (rests) expect(remembered(shown, rigOf(shown).mics)).toEqual(fresh);
            layout = shown;
          }
        }
        expect(remembered(layout, rigOf(layout).mics)).toEqual(
          createClearances()(layout, buildRig(layout).mics),
        );
      }),
      { numRuns: 40 },
    );
  }, 120_000);

  it('in a hurry are those of before for a mic whose nearest move and place stay', () => {
    const layout = startingKit('large-kit');
    const clearancesOf = createClearances();
    const rigOf = createRigBuilder();
    const first = clearancesOf(layout, rigOf(layout).mics);
    const pieces = layout.pieces.map((piece) =>
      piece.kind === 'floorTom' ? { ...piece, x: piece.x + 30 } : piece,
    );
    const second = clearancesOf({ ...layout, pieces }, rigOf({ ...layout, pieces }).mics, true);
    const kept = second.filter(({ nearest }, k) => nearest === first[k]?.nearest);
    expect(kept.map(({ mic }) => mic)).toContain('mic-snare');
    expect(kept.length).toBeLessThan(second.length);
  });

  it('are given in the order of the mics, each once', () => {
    const layout = startingKit('large-kit');
    const { mics } = buildRig(layout);
    const rows = createClearances()(layout, mics);
    expect(rows.map(({ mic }) => mic)).toEqual(layout.mics.map(({ id }) => id));
    const reversed = createClearances()(layout, mics.toReversed());
    expect(reversed.toReversed()).toEqual(rows);
  });

  it('are looked up again for what did not change: the same nearest places', () => {
    const layout = startingKit('large-kit');
    const { mics } = buildRig(layout);
    const clearancesOf = createClearances();
    const first = clearancesOf(layout, mics);
    const second = clearancesOf({ ...layout, margin: 10 }, mics);
    expect(second.every(({ nearest }, k) => nearest === first[k]?.nearest)).toBe(true);
  });
});

describe('createMotion', () => {
  it('keeps the motion while kit and player stay the same, and not longer', () => {
    const motionFor = createMotion();
    const layout = startingKit('four-piece-jazz');
    const first = motionFor(layout);
    expect(motionFor({ ...layout })).toBe(first);
    expect(motionFor({ ...layout, pieces: [...layout.pieces] })).not.toBe(first);
    const taller = { ...layout, player: { ...layout.player, stature: 1900 } };
    expect(motionFor(taller)).not.toBe(first);
  });
});
