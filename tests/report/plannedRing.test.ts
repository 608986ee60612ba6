import { describe, expect, it } from 'vitest';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { type ClipMic, usualClip } from '../../src/layout/catalogue/offered/usualClip.ts';
import { addMic } from '../../src/layout/edit/mics.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { createFieldFinder } from '../../src/report/fields.ts';
import { plannedRing, withPlanned } from '../../src/report/plannedRing.ts';
import { clipIn, type RingOfMic, ringOf } from '../../src/report/ring.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { turnBetween } from '../../src/units/angle.ts';
import { seededKits } from '../support/randomKit.ts';

const STANDING = /^(mic-in-shell|boom-through-piece|mic-against-)/;
const IN_PLACE = /^(mic-in-|boom-through-piece|mic-against-)/;
const IN_THE_WAY = /^(mic-in-shell|boom-through-piece|mic-against-|run-no-way)/;

/** Kits whose drums have no clips; what stands on the deck stays. */
const bare = [fivePieceOneRack('kit'), largeKit('large')].map(
  (layout): Layout => ({
    ...layout,
    mics: layout.mics.filter(({ mount }) => mount.kind !== 'clip'),
  }),
);
const drums = bare.flatMap((layout) =>
  layout.pieces.filter(isDrum).map(({ id, name }) => ({ layout, id, name })),
);

/** Drums of random kits, whose stands and pieces bar some ways. */
const seededDrums = seededKits(12, 19).flatMap((layout) => {
  const drum = layout.pieces.find(isDrum);
  return drum && usualClip(layout, drum.id) ? [{ layout, id: drum.id, name: layout.name }] : [];
});

function plannedOn(layout: Layout, drum: string): Required<RingOfMic> {
  const ring = plannedRing(layout, drum);
  if (!ring?.planned) throw new Error('expected the ring of a mic that is not placed yet');
  return { ...ring, planned: ring.planned };
}

describe('R2: the ring of a drum without a clip', () => {
  it('is that of the mic it proposes, were it placed', () => {
    for (const { layout, id } of drums) {
      const ring = plannedOn(layout, id);
      const { mic } = ring.planned;
      expect(layout.mics.map((one) => one.id)).not.toContain(mic.id);
      const placed = addMic(layout, mic);
      expect(placed.mics.at(-1)).toEqual(mic);
      expect(ringOf(placed, mic.id)).toEqual({
        mic: mic.id,
        drum: id,
        reach: ring.reach,
        arcs: ring.arcs,
      });
      expect(clipIn(withPlanned(layout, ring), ring.mic)?.drum.id).toBe(id);
    }
  });

  it('proposes what the analysis then says: clear where any place is, with nothing in its way', () => {
    const analyse = createAnalyst();
    const verdicts = new Set<string>();
    // By a wide margin no place of some drums is clear.
    const wide = drums.map((drum) => ({ ...drum, layout: { ...drum.layout, margin: 160 } }));
    for (const { layout, id, name } of [...drums, ...wide]) {
      const { planned, arcs } = plannedOn(layout, id);
      const { mic, place } = planned;
      const report = analyse(addMic(layout, mic));
      const row = report.clearances.find((one) => one.mic === mic.id);
      expect(row?.verdict, name).toBe(place.verdict);
      expect(row?.clearance).toBeCloseTo(place.clearance, 6);
      const long = arcs.filter(({ from, to }) => to - from > 2).map(({ verdict }) => verdict);
      const best = (['clear', 'tight', 'struck'] as const).find((verdict) =>
        long.includes(verdict),
      );
      expect(place.verdict, name).toBe(best);
      verdicts.add(place.verdict);
      if (place.verdict === 'struck') continue;
      // Not at the very end of an arc, which is exact to half a degree.
      for (const at of [place.angle - 0.5, place.angle + 0.5]) {
        const turned = (at + 360) % 360;
        const arc = arcs.find(({ from, to }) => from <= turned && turned < to);
        expect(arc?.verdict, `${name} at ${at}`).toBe(place.verdict);
      }
    }
    expect(verdicts).toContain('clear');
    expect(verdicts).toContain('tight');
  });

  it('proposes the nearest clear place: every whole degree nearer to the usual one is not clear, or not free', () => {
    const analyse = createAnalyst();
    for (const { layout, id, name } of drums) {
      const { planned, arcs } = plannedOn(layout, id);
      if (planned.place.verdict !== 'clear') continue;
      const from = usualClip(layout, id)?.mount.angle ?? Number.NaN;
      const off = Math.abs(turnBetween(from, planned.place.angle));
      const inClear = (angle: number): boolean =>
        arcs.some((arc) => arc.verdict === 'clear' && arc.from <= angle && angle < arc.to);
      const nearer = Array.from({ length: 360 }, (_, angle) => angle)
        .filter((angle) => Math.abs(turnBetween(from, angle)) < off - 0.01)
        .filter((angle) =>
          [angle - 0.5, angle, angle + 0.5].every((at) => inClear((at + 360) % 360)),
        );
      for (const angle of nearer) {
        const mic = { ...planned.mic, mount: { ...planned.mic.mount, angle } };
        const stands = analyse(addMic(layout, mic)).findings.filter(
          ({ code, about }) => about.includes(mic.id) && IN_THE_WAY.test(code),
        );
        expect(stands, `${name} at ${angle}`).not.toEqual([]);
      }
    }
  });

  it('proposes no place in what stands there or in the player, though that would be the nearest clear one', () => {
    const analyse = createAnalyst();
    const inTheWay = (layout: Layout, mic: ClipMic): boolean =>
      analyse(addMic(layout, mic)).findings.some(
        ({ code, about }) => about.includes(mic.id) && IN_PLACE.test(code),
      );
    let moved = 0;
    for (const { layout, id, name } of drums) {
      const { mic } = plannedOn(layout, id).planned;
      const { tip } = placeMic(mic, layout);
      const drum = layout.pieces.find((piece) => piece.id === id);
      if (drum?.kind !== 'snare' && drum?.kind !== 'rackTom' && drum?.kind !== 'floorTom') continue;
      const taken = addMic(layout, {
        ...mic,
        id: 'taken',
        mount: {
          kind: 'stand',
          stand: 'tripodTall',
          base: { x: tip.x + 500, y: tip.y },
          turn: 0,
          mast: null,
          tip,
          azimuth: 0,
          pitch: -80,
        },
      });
      const sat = movePiece(layout, id, { x: drum.x - tip.x, y: drum.y - tip.y });
      for (const scene of [taken, sat]) {
        const { planned, arcs } = plannedOn(scene, id);
        if (planned.place.angle !== mic.mount.angle) moved += 1;
        if (!inTheWay(scene, planned.mic)) continue;
        // Then no other place that is as clear is any better.
        for (let angle = 0; angle < 360; angle += 10) {
          const arc = arcs.find(({ from, to }) => from <= angle - 1 && angle + 1 < to);
          if (arc?.verdict !== planned.place.verdict) continue;
          const other = { ...planned.mic, mount: { ...planned.mic.mount, angle } };
          expect(inTheWay(scene, other), `${name} at ${angle}`).toBe(true);
        }
      }
    }
    expect(moved).toBeGreaterThan(3);
  });

  it('proposes a place whose cable has a free way, and says so where no place that is as clear has one', () => {
    const analyse = createAnalyst();
    const hasNoWay = (layout: Layout, mic: ClipMic): boolean =>
      analyse(addMic(layout, mic)).findings.some(
        ({ code, about }) => code === 'run-no-way' && about.includes(mic.id),
      );
    const told = { way: 0, none: 0 };
    for (const { layout, id, name } of seededDrums) {
      const { planned, arcs } = plannedOn(layout, id);
      expect(hasNoWay(layout, planned.mic), name).toBe(!planned.hasWay);
      told[planned.hasWay ? 'way' : 'none'] += 1;
      if (planned.hasWay || planned.place.verdict !== 'clear') continue;
      const from = usualClip(layout, id)?.mount.angle ?? Number.NaN;
      const off = Math.abs(turnBetween(from, planned.place.angle));
      // None of the other clear places is any better, and none that is free is nearer.
      for (let angle = 0; angle < 360; angle += 30) {
        const arc = arcs.find(({ from, to }) => from <= angle - 1 && angle + 1 < to);
        if (arc?.verdict !== 'clear') continue;
        const mic = { ...planned.mic, mount: { ...planned.mic.mount, angle } };
        const isFree = !analyse(addMic(layout, mic)).findings.some(
          ({ code, about }) => about.includes(mic.id) && STANDING.test(code),
        );
        if (!isFree) continue;
        expect(hasNoWay(layout, mic), `${name} at ${angle}`).toBe(true);
        expect(Math.abs(turnBetween(from, angle)), `${name} at ${angle}`).toBeGreaterThan(
          off - 0.01,
        );
      }
    }
    expect(told.way).toBeGreaterThan(5);
    expect(told.none).toBeGreaterThan(0);
  }, 240_000);

  it('is none for what is no drum, and comes by message as it is at hand', () => {
    const [layout] = bare;
    if (!layout) throw new Error('expected a kit');
    for (const { id } of layout.pieces.filter((piece) => !isDrum(piece))) {
      expect(plannedRing(layout, id)).toBeNull();
    }
    expect(plannedRing(layout, 'gone')).toBeNull();
    const finder = createFieldFinder();
    for (const { layout: from, id } of drums.slice(0, 3)) {
      expect(finder.plannedRing(structuredClone(from), id)).toEqual(plannedRing(from, id));
    }
  });
});
