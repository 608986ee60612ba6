import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SwapStep, swapOf } from '../../../src/cabling/swap/swapSteps.ts';
import { capsuleToCylinder } from '../../../src/geometry/capsuleContact.ts';
import { cylinderOverlap } from '../../../src/geometry/cylinderOverlap.ts';
import { along, length, subtract, vec } from '../../../src/geometry/vector.ts';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { changePiece } from '../../../src/layout/edit/change.ts';
import { deleteMic, setInput } from '../../../src/layout/edit/mics.ts';
import { mirrorKit } from '../../../src/layout/edit/mirror.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { isDrum } from '../../../src/layout/pieces/piece.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { carriers } from '../../../src/rig/mics/wayDown.ts';
import type { PlacedMic, PlacedPiece } from '../../../src/rig/placed.ts';
import { outsideCylinder } from '../../geometry/axialSolids.ts';
import { randomKit } from '../../support/randomKit.ts';

const drumsOf = (layout: Layout) => layout.pieces.filter(isDrum);
const stepsOf = (layout: Layout, drum: string): readonly SwapStep[] =>
  swapOf(buildRig(layout), drum)?.steps ?? [];
const told = (layout: Layout, drum: string): readonly string[] =>
  stepsOf(layout, drum).map(({ what, about }) => `${what} ${about}`);
const large = largeKit('kit');

/** The room round a lifted drum, X2. */
const ROOM = 10;
const UP = vec(0, 0, 1);

const HEIGHTS = 100;
const APART = 8;

/** How near a mic comes to a drum at evenly spread heights of its lift, at points 8 mm apart: never below the true least. */
function sampledGap(mic: PlacedMic, { piece, shells: [shell] }: PlacedPiece): number {
  if (!isDrum(piece) || !shell) throw new RangeError('Expected a drum');
  const half = shell.halfHeight + piece.rim.height;
  const grown = {
    centre: along(shell.centre, shell.axis, ROOM / 2),
    axis: shell.axis,
    radius: shell.radius + piece.rim.width + ROOM,
    halfHeight: half + ROOM / 2,
  };
  let least = Number.POSITIVE_INFINITY;
  for (const { capsule } of mic.solids) {
    const { a, b, radius } = capsule;
    const way = subtract(b, a);
    const count = Math.max(1, Math.ceil(length(way) / APART));
    for (let i = 0; i <= count; i += 1) {
      const point = along(a, way, i / count);
      for (let k = 0; k <= HEIGHTS; k += 1) {
        const below = along(point, UP, (-2 * half * k) / HEIGHTS);
        least = Math.min(least, outsideCylinder(below, grown) - radius);
      }
    }
  }
  return least;
}

/** Whether a piece stands in a drum at one of evenly spread heights of its lift, with some room round the drum and over it. */
function meetsSampled(other: PlacedPiece, { piece, shells: [shell] }: PlacedPiece, room: number) {
  if (!isDrum(piece) || !shell) throw new RangeError('Expected a drum');
  const half = shell.halfHeight + piece.rim.height;
  const bodies = [
    ...other.shells,
    ...other.hoops.map((hoop) => ({ ...hoop, radius: hoop.outerRadius })),
  ];
  return Array.from({ length: HEIGHTS + 1 }, (_, k) => ({
    centre: along(along(shell.centre, shell.axis, room / 2), UP, (2 * half * k) / HEIGHTS),
    axis: shell.axis,
    radius: shell.radius + piece.rim.width + room,
    halfHeight: half + room / 2,
  })).some(
    (drum) =>
      bodies.some((body) => cylinderOverlap(drum, body) !== undefined) ||
      other.hardware.some((rod) => capsuleToCylinder(rod, drum).gap < 0),
  );
}

/** What sampling can miss: half a step along the solid and half a step of the longest lift. */
const SAMPLED = 10;

describe('what is undone before a drum is lifted out', () => {
  it('X4: a mic on a stand is told exactly when dense sampling finds it in the way', () => {
    let [inTheWay, free] = [0, 0];
    fc.assert(
      fc.property(randomKit, (layout) => {
        const rig = buildRig(layout);
        for (const drum of drumsOf(layout).filter(({ support }) => support.kind !== 'legs')) {
          const placed = rig.pieces.find(({ piece }) => piece.id === drum.id);
          const steps = swapOf(rig, drum.id)?.steps ?? [];
          for (const mic of rig.mics.filter(({ stand }) => stand !== null)) {
            const gap = placed ? sampledGap(mic, placed) : 0;
            if (Math.abs(gap) < SAMPLED) continue;
            const isTold = steps.some(({ about }) => about === mic.mic.id);
            expect([mic.mic.id, isTold]).toEqual([mic.mic.id, gap < 0]);
            if (isTold) inTheWay += 1;
            else free += 1;
          }
        }
      }),
      { numRuns: 80 },
    );
    // Both happened, or the property would say nothing.
    expect(inTheWay).toBeGreaterThan(5);
    expect(free).toBeGreaterThan(5);
  });

  it('X5: a piece is moved aside exactly when sampling finds it in the way, unless what carries it is', () => {
    let [inTheWay, free] = [0, 0];
    fc.assert(
      fc.property(randomKit, (layout) => {
        const rig = buildRig(layout);
        const { pieces } = layout;
        for (const drum of drumsOf(layout).filter(({ support }) => support.kind !== 'legs')) {
          const placed = rig.pieces.find(({ piece }) => piece.id === drum.id);
          const steps = swapOf(rig, drum.id)?.steps ?? [];
          const aside = steps.filter(({ what }) => what === 'moveAside').map(({ about }) => about);
          const chainOf = (id: string) =>
            carriers(pieces.find((piece) => piece.id === id) ?? drum, { pieces }).map(
              (piece) => piece.id,
            );
          for (const other of rig.pieces) {
            const { id } = other.piece;
            const chain = chainOf(id);
            if (!placed || chain.includes(drum.id) || chainOf(drum.id).includes(id)) continue;
            const isTold = aside.some((about) => chain.includes(about));
            if (meetsSampled(other, placed, ROOM - SAMPLED)) {
              expect([id, isTold]).toEqual([id, true]);
              inTheWay += 1;
            } else if (!meetsSampled(other, placed, ROOM + SAMPLED)) {
              expect([id, aside.includes(id)]).toEqual([id, false]);
              free += 1;
            }
          }
        }
      }),
      { numRuns: 40 },
    );
    expect(inTheWay).toBeGreaterThan(5);
    expect(free).toBeGreaterThan(5);
  });

  it('X3: a clip on the drum is unplugged where it is plugged, and comes off', () => {
    expect(told(large, 'snare')).toEqual([
      'unplug mic-snare',
      'unplug mic-snare-condenser',
      'unclip mic-snare',
      'unclip mic-snare-condenser',
      'release snare',
    ]);
    expect(told(setInput(large, 'mic-snare', null), 'snare')).not.toContain('unplug mic-snare');
  });

  it('is the same for a mirrored kit', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        for (const { id } of drumsOf(layout)) {
          expect(told(mirrorKit(layout), id)).toEqual(told(layout, id));
        }
      }),
      { numRuns: 40 },
    );
  });

  it('loses exactly its own steps with a mic that is not there', () => {
    for (const { id } of drumsOf(large)) {
      for (const mic of large.mics) {
        const rest = told(large, id).filter((step) => !step.endsWith(` ${mic.id}`));
        expect(told(deleteMic(large, mic.id), id)).toEqual(rest);
      }
    }
  });

  it('has cables first and the drum’s own hold last, and names each thing once for one deed', () => {
    for (const kit of STARTING_KITS) {
      const layout = kit.make('kit');
      for (const { id } of drumsOf(layout)) {
        const steps = told(layout, id);
        expect(new Set(steps).size).toBe(steps.length);
        const whats = stepsOf(layout, id).map(({ what }) => what);
        const cables = whats.filter((what) => what === 'unplug');
        expect(whats.slice(0, cables.length)).toEqual(cables);
        expect(whats.slice(0, -1)).not.toContain('release');
      }
    }
  });

  it('X5: what the drum carries comes off with its mics unplugged; what carries the drum is not in its way', () => {
    const onRack = changePiece(large, 'rack-2', (piece) =>
      isDrum(piece) ? { ...piece, support: { kind: 'held' as const, by: 'snare' } } : piece,
    );
    const steps = told(onRack, 'snare');
    expect(steps).toContain('takeOff rack-2');
    expect(steps).toContain('unplug mic-rack-2');
    expect(steps).not.toContain('unclip mic-rack-2');
    expect(steps).not.toContain('moveAside rack-2');
    expect(told(large, 'rack-2').filter((step) => step.endsWith(' kick'))).toEqual([
      'release kick',
    ]);
  });

  it('X5: mics on clips of a piece that is moved aside go with it', () => {
    const steps = told(large, 'rack-2');
    expect(steps).toContain('moveAside rack-1');
    expect(steps.filter((step) => step.endsWith('mic-rack-1'))).toEqual([]);
  });

  it('X6: a drum on legs stands free, and its legs come up with it', () => {
    expect(told(large, 'floor-2').filter((step) => step.startsWith('release'))).toEqual([]);
    const [rack] = drumsOf(large);
    expect(rack && swapOf(buildRig(large), 'kick')).toBeNull();
    expect(swapOf(buildRig(large), 'nothing')).toBeNull();
  });

  it('X1: is lifted by the height of its shell and both hoops', () => {
    const snare = drumsOf(large).find(({ id }) => id === 'snare');
    const swap = swapOf(buildRig(large), 'snare');
    expect(swap?.rise).toBeCloseTo((snare?.depth ?? 0) + 2 * (snare?.rim.height ?? 0), 9);
  });
});
