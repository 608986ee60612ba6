import { describe, expect, test } from 'vitest';
import { clearEnds } from '../../../src/editor/rim/arcs.ts';
import type { Hold, Place } from '../../../src/editor/tools/drag.ts';
import { dragClip } from '../../../src/editor/tools/dragClip.ts';
import { along, type Vec2 } from '../../../src/geometry/vector.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { type ClipMount, clipMount } from '../../../src/layout/mics/mount.ts';
import { clipIn, type RingOfMic, ringOf } from '../../../src/report/ring.ts';
import { toDeck } from '../../../src/rig/deckFrame.ts';
import { placeMic } from '../../../src/rig/placeMic.ts';
import { rimDirection } from '../../../src/rig/rimDirection.ts';
import { surfaceOf } from '../../../src/rig/surface.ts';
import { turnBetween } from '../../../src/units/angle.ts';
import { kit, micAfter } from '../support.ts';

const layout = kit('five-piece-one-rack');
const id = layout.mics.find(({ mount }) => mount.kind === 'clip')?.id ?? '';
const found = clipIn(layout, id);
if (!found) throw new Error('expected a clip');
const { mic, mount, drum } = found;
const placed = placeMic(mic, layout);
const NEAR = 20;

const place = (spot: Vec2): Place => ({ kit: spot, deck: toDeck(layout.deck, spot) });
/** Where the tip is at another angle and reach. */
function tipAt(angle: number, reach: number): Vec2 {
  const surface = surfaceOf(drum);
  const inward = along(surface.centre, rimDirection(surface, angle), surface.radius - reach);
  return along(inward, surface.normal, mount.height);
}
function dragged(to: Vec2, ring: RingOfMic | null = null): ClipMount {
  const hold: Hold = {
    from: place(placed.tip),
    near: NEAR,
    pxPerMm: 0.25,
    ring: () => ring,
    nameOf: ({ name }) => name,
  };
  const after: Layout = dragClip({ placed, mount, drum }, hold).to(place(to))(layout);
  return clipMount.parse(micAfter(after, id).mount);
}

describe('dragging a clip', () => {
  test('goes round the rim with the finger and in and out, its height kept', () => {
    const after = dragged(tipAt(mount.angle + 50, mount.reach + 60));
    expect(turnBetween(mount.angle, after.angle)).toBeCloseTo(50, 4);
    expect(after.reach).toBeCloseTo(mount.reach + 60, 4);
    expect(after.height).toBe(mount.height);
    expect(after.pitch).toBe(mount.pitch);
  });

  test('N3: it keeps its reach while the finger strays from the rim by no more than twice the detent', () => {
    expect(dragged(tipAt(mount.angle + 50, mount.reach + 1.9 * NEAR)).reach).toBe(mount.reach);
    expect(dragged(tipAt(mount.angle + 50, mount.reach + 2.1 * NEAR)).reach).not.toBe(mount.reach);
  });

  test('N4: it rests at the ends of the clear arcs, and a little more movement leaves them', () => {
    const ring = ringOf(layout, id);
    const ends = clearEnds(ring?.arcs ?? []);
    expect(ends.length).toBeGreaterThan(0);
    for (const end of ends) {
      expect(dragged(tipAt(end + 2, mount.reach), ring).angle).toBeCloseTo(end, 6);
      expect(dragged(tipAt(end - 2, mount.reach), ring).angle).toBeCloseTo(end, 6);
      expect(turnBetween(end, dragged(tipAt(end + 8, mount.reach), ring).angle)).toBeCloseTo(8, 4);
      // A ring of another mic or reach, or none yet, holds nothing.
      for (const other of [
        ring && { ...ring, mic: 'other' },
        ring && { ...ring, reach: 90 },
        null,
      ]) {
        const { angle } = dragged(tipAt(end + 2, mount.reach), other);
        expect(turnBetween(end, angle)).toBeCloseTo(2, 4);
      }
    }
  });
});
