import { describe, expect, it } from 'vitest';
import { floorObstacles, micObstacles, pieceObstacles } from '../../src/cabling/floorObstacles.ts';
import type { Keeping, Obstacle } from '../../src/cabling/obstacle.ts';
import { isInside } from '../../src/geometry/convexPolygon.ts';
import {
  onStand,
  usualFloorTom,
  usualKick,
  usualPedal,
  usualSnare,
  usualThrone,
} from '../../src/layout/catalogue/defaults/usualPieces.ts';
import { standSpec } from '../../src/layout/catalogue/standClasses.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mount } from '../../src/layout/mics/mount.ts';
import type { Piece } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { placePiece } from '../../src/rig/placePiece.ts';
import { bareLayout, type Spot, startingLayouts } from './scenes.ts';

const keeping: Keeping = { keepAway: 50, toDeck: ({ x, y }) => ({ x, y }) };
const ofPiece = (piece: Piece): Obstacle[] =>
  pieceObstacles(placePiece(piece, bareLayout), keeping);
const ofMount = (mount: Mount, micClass = 'pencil-condenser'): Obstacle[] => {
  const mic = { id: 'mic', name: 'Mic', micClass, hears: [], mount, input: null };
  return micObstacles(placeMic(mic, { ...bareLayout, pieces: [usualKick('kick')] }), keeping);
};
const onMicStand = (stand: Extract<Mount, { kind: 'stand' }>['stand']): Mount => ({
  kind: 'stand',
  stand,
  base: { x: 0, y: 0 },
  turn: 0,
  mast: null,
  tip: { x: 0, y: 300, z: 900 },
  azimuth: 90,
  pitch: 0,
});
const kinds = (found: readonly Obstacle[]): string[] => found.map(({ kind }) => kind);
const stands = (found: readonly Obstacle[], at: Spot): boolean =>
  found.some(({ body }) => isInside(body, at));
const keptOff = (found: readonly Obstacle[], at: Spot): boolean =>
  found.some(({ outline }) => isInside(outline, at));

describe('what cables keep off', () => {
  it('O1: a kick is its whole outline, with a foot at each spur', () => {
    const found = ofPiece(usualKick('kick'));
    expect(kinds(found)).toEqual(['kick', 'base', 'base']);
    const kick = usualKick('kick');
    expect(stands(found, { x: kick.x, y: kick.y })).toBe(true);
    expect(stands(found, { x: kick.x + kick.diameter / 2, y: kick.y })).toBe(true);
    expect(stands(found, { x: kick.x + kick.diameter / 2 + 30, y: kick.y })).toBe(false);
    expect(keptOff(found, { x: kick.x + kick.diameter / 2 + 30, y: kick.y })).toBe(true);
  });

  it('O2: a pedal is its outline and the foot space', () => {
    expect(kinds(ofPiece(usualPedal('pedal')))).toEqual(['pedal', 'footSpace']);
  });

  it('O3: a throne is the whole of its feet: nothing is laid under it', () => {
    const found = ofPiece(usualThrone('throne'));
    expect(kinds(found)).toEqual(['throne']);
    expect(stands(found, { x: 60, y: 60 })).toBe(true);
  });

  it('O4: between the legs of a stand a cable passes, over hub and feet it does not', () => {
    const found = ofPiece({ ...usualSnare('snare'), x: 0, y: 0, support: onStand(300, 0) });
    expect(kinds(found)).toEqual(['hub', 'foot', 'foot', 'foot']);
    expect(stands(found, { x: 0, y: 0 })).toBe(true);
    expect(stands(found, { x: 299, y: 0 })).toBe(true);
    expect(keptOff(found, { x: 150, y: 0 })).toBe(false);
    expect(keptOff(found, { x: -200, y: 0 })).toBe(false);
  });

  it('O4: a leg counts from its foot to where its underside is 30 mm over the deck', () => {
    const { footRadius, legHeight } = standSpec('tripodMedium');
    const found = ofMount(onMicStand('tripodMedium'));
    // By hand: the underside rises evenly from 0 at the foot to the leg's height less its thickness' half (8) at the hub.
    const low = (footRadius * 30) / (legHeight - 8);
    const ends = footRadius - low;
    expect(stands(found, { x: ends + 1, y: 0 })).toBe(true);
    expect(stands(found, { x: ends - 8 - 2, y: 0 })).toBe(false);
  });

  it('O4: a leg that lies flat counts all along', () => {
    const placed = placePiece(usualSnare('snare'), bareLayout);
    const [footprint] = placed.footprints;
    if (!footprint) throw new Error('a footprint was expected');
    const found = pieceObstacles(
      { ...placed, footprints: [{ ...footprint, legHeight: 30 }] },
      keeping,
    );
    for (const foot of footprint.feet) {
      for (const t of [0.1, 0.5, 0.9]) {
        const at = {
          x: foot.x + t * (footprint.hub.x - foot.x),
          y: foot.y + t * (footprint.hub.y - foot.y),
        };
        expect(stands(found, at)).toBe(true);
      }
    }
  });

  it('O5: a floor tom is its three feet, a round base its disc, a plate on the deck the plate', () => {
    const tom = usualFloorTom('floor');
    const feet = ofPiece(tom);
    expect(kinds(feet)).toEqual(['base', 'base', 'base']);
    expect(stands(feet, { x: tom.x, y: tom.y })).toBe(false);
    const { footRadius } = standSpec('roundBoom');
    const base = ofMount(onMicStand('roundBoom'));
    expect(kinds(base)).toEqual(['base']);
    expect(stands(base, { x: footRadius - 1, y: 0 })).toBe(true);
    const plate = ofMount({ kind: 'plateOnDeck', x: 0, y: 0, turn: 90 }, 'boundary-plate');
    expect(kinds(plate)).toEqual(['plate']);
    expect(stands(plate, { x: 0, y: -20 })).toBe(true);
  });

  it('a mic in the kick, or on a clip, has nothing on the deck', () => {
    expect(ofMount({ kind: 'plateInKick', kick: 'kick', depth: 200 }, 'boundary-plate')).toEqual(
      [],
    );
  });

  it('O6: all of it grows with the distance to keep, and what stands there does not', () => {
    for (const layout of startingLayouts) {
      const rig = buildRig(layout);
      const wider: Layout = { ...layout, cabling: { ...layout.cabling, keepAway: 120 } };
      const near = floorObstacles(layout, rig);
      const far = floorObstacles(wider, rig);
      expect(far.map(({ body }) => body)).toEqual(near.map(({ body }) => body));
      for (const [i, { outline }] of near.entries()) {
        const larger = far[i]?.outline;
        if (!larger) throw new Error('as many obstacles were expected');
        expect(outline.corners.every((corner) => isInside(larger, corner))).toBe(true);
      }
    }
  });

  it('every obstacle has an owner of the layout; only the box has none', () => {
    for (const layout of startingLayouts) {
      const ids = [...layout.pieces, ...layout.mics].map(({ id }) => id);
      for (const { kind, owner } of floorObstacles(layout, buildRig(layout))) {
        if (kind === 'box') expect(owner).toBeNull();
        else expect(ids).toContain(owner);
      }
    }
  });
});
