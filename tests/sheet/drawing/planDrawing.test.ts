import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { StandClass } from '../../../src/layout/mics/mount.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { spotsOfMic, spotsOfPiece } from '../../../src/report/placement/spots.ts';
import { planDrawing } from '../../../src/sheet/drawing/planDrawing.ts';
import type { Point } from '../../../src/sheet/mark.ts';

/** Where two lines of one length cross at right angles in their middles, in the layer of what is measured. */
function crossesOn(layout: Layout): readonly Point[] {
  const forms = { of: () => [], standOf: () => [] };
  const { marks } = planDrawing(layout, createAnalyst()(layout), 'player', forms);
  const bars = marks.flatMap((mark) => {
    if (mark.kind !== 'line' || mark.layer !== 'DIMENSIONS') return [];
    const [from, to, ...more] = mark.points;
    return from && to && more.length === 0
      ? [{ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2, dx: to.x - from.x, dy: to.y - from.y }]
      : [];
  });
  return bars.filter((bar) =>
    bars.some(
      (other) =>
        Math.hypot(other.x - bar.x, other.y - bar.y) < 1e-6 &&
        Math.abs(other.dx * bar.dx + other.dy * bar.dy) < 1e-6 &&
        Math.abs(Math.hypot(other.dx, other.dy) - Math.hypot(bar.dx, bar.dy)) < 1e-6,
    ),
  );
}

const onStands = (layout: Layout, stand: StandClass): Layout => ({
  ...layout,
  mics: layout.mics.map((mic) =>
    mic.mount.kind === 'stand' ? { ...mic, mount: { ...mic.mount, stand } } : mic,
  ),
});

test('every spot at which a stand or the throne is set down is marked with a cross, and nothing else is', () => {
  const kits = STARTING_KITS.map(({ make }) => make('kit'));
  for (const layout of [...kits, ...kits.map((kit) => onStands(kit, 'roundBoom'))]) {
    const spots = [
      ...layout.pieces.flatMap((piece) =>
        spotsOfPiece(piece, layout).filter(
          ({ point }) => point === 'stand' || piece.kind === 'throne',
        ),
      ),
      ...layout.mics.flatMap((mic) =>
        spotsOfMic(mic, layout).filter(({ point }) => point === 'stand'),
      ),
    ].map(({ at }) => at);
    const crosses = crossesOn(layout);
    const isAt = (p: Point) => (q: Point) => Math.hypot(p.x - q.x, p.y - q.y) < 1e-6;
    expect(spots.length).toBeGreaterThan(0);
    expect(spots.filter((spot) => !crosses.some(isAt(spot)))).toEqual([]);
    expect(crosses.filter((cross) => !spots.some(isAt(cross)))).toEqual([]);
  }
});
