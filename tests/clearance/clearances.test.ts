import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createClearances, createMotion } from '../../src/clearance/clearances.ts';
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
  }, 60_000);

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
