import { describe, expect, it } from 'vitest';
import type { Layout } from '../../src/layout/layout.ts';
import { createFieldFinder } from '../../src/report/fields.ts';
import { ringOf } from '../../src/report/ring.ts';
import { startingKit } from '../clearance/kits.ts';

/** A layout as it comes by message: equal, and none of it the same object. */
const byMessage = (layout: Layout): Layout => structuredClone(layout);

describe('the finder of fields', () => {
  it('finds in every frame of a drag what is found with nothing known from before', () => {
    const layout = startingKit('large-kit');
    const clip = layout.mics.find(({ mount }) => mount.kind === 'clip');
    if (clip?.mount.kind !== 'clip') throw new Error('a clip was expected');
    const { drum } = clip.mount;
    const finder = createFieldFinder();
    const moved = (by: number): Layout => ({
      ...layout,
      pieces: layout.pieces.map((piece) =>
        piece.id === drum && 'z' in piece ? { ...piece, x: piece.x + by } : piece,
      ),
    });
    const other = (): Layout => ({
      ...moved(12),
      player: { ...layout.player, strokeHeight: layout.player.strokeHeight + 40 },
    });
    for (const frame of [moved(0), moved(12), moved(-25), other(), moved(12), moved(0)]) {
      expect(finder.ring(byMessage(frame), clip.id)).toEqual(ringOf(frame, clip.id));
    }
    expect(ringOf(moved(-25), clip.id)).not.toEqual(ringOf(moved(12), clip.id));
    expect(ringOf(other(), clip.id)).not.toEqual(ringOf(moved(12), clip.id));
  });
});
