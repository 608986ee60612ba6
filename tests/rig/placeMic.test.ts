import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, distance, dot, length, subtract, type Vec3, vec } from '../../src/geometry/vector.ts';
import { findMicClass } from '../../src/layout/catalogue/micClasses.ts';
import { standSpec } from '../../src/layout/catalogue/standClasses.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mount } from '../../src/layout/mics/mount.ts';
import type { Drum } from '../../src/layout/pieces/drum.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { MicPart, PlacedMic } from '../../src/rig/placed.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { surfaceOf } from '../../src/rig/surface.ts';
import { anyClass, anyClip, anyStand, fivePiece, kits, micOn } from './kits.ts';
import { micText } from './mirrored.ts';

const place = (mount: Mount, micClass?: string): PlacedMic =>
  placeMic(micOn(mount, micClass), fivePiece);
const parts = (placed: PlacedMic, part: MicPart) =>
  placed.solids.filter((solid) => solid.part === part).map(({ capsule }) => capsule);
const rackTom = fivePiece.pieces.find(({ id }) => id === 'rack-2') as Drum;
const anyMount = fc.oneof(anyStand, anyClip('rack-2'), anyClip('snare'), anyClip('floor'));
const straightClip: Extract<Mount, { kind: 'clip' }> = {
  kind: 'clip',
  drum: 'snare',
  material: 'rubber',
  angle: 90,
  reach: 30,
  height: 45,
  pitch: 35,
};

/** How far the mic reaches in front of its tip, and behind it, along its axis. */
function extent(placed: PlacedMic): { readonly front: number; readonly behind: number } {
  const own = (['body', 'connector', 'bend'] as const).flatMap((part) => parts(placed, part));
  const offsets = own.flatMap(({ a, b, radius }) =>
    [a, b].map((p) => ({ at: dot(subtract(p, placed.tip), placed.axis), radius })),
  );
  return {
    front: Math.max(...offsets.map(({ at, radius }) => at + radius)),
    behind: -Math.min(...offsets.map(({ at, radius }) => at - radius)),
  };
}

describe('placeMic', () => {
  it('gives exactly mirrored solids, stands, descents and deck points for a mirrored kit', () => {
    for (const layout of kits) {
      const mirrored = buildRig(mirrorKit(layout)).mics.map((mic) => micText(mic, 1));
      expect(mirrored).toEqual(buildRig(layout).mics.map((mic) => micText(mic, -1)));
    }
  });

  it('gives exactly mirrored solids for any mount and class', () => {
    fc.assert(
      fc.property(anyMount, anyClass, (mount, micClass) => {
        const layout = { ...fivePiece, mics: [micOn(mount, micClass)] };
        const here = buildRig(layout).mics.map((mic) => micText(mic, -1));
        expect(buildRig(mirrorKit(layout)).mics.map((mic) => micText(mic, 1))).toEqual(here);
      }),
      { endOnFailure: true },
    );
  });

  it('M1, M2: no body passes its tip, and an end-address mic reaches it', () => {
    fc.assert(
      fc.property(anyMount, anyClass, (mount, micClass) => {
        const placed = place(mount, micClass);
        expect(parts(placed, 'body').length).toBeGreaterThan(0);
        expect(extent(placed).front).toBeLessThan(1e-9);
        if (placed.micClass.address === 'end') expect(extent(placed).front).toBeGreaterThan(-1e-9);
        expect(length(placed.axis)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('M1, M4: behind its length a mic keeps 110 mm for a straight plug and 40 for a right-angled one', () => {
    // Within the reference values: 100-120 mm behind for a straight plug with its bend, 35-45 for a right-angled one.
    fc.assert(
      fc.property(anyStand, (mount) => {
        const level = { ...mount, pitch: 0 };
        expect(extent(place(level, 'short-dynamic')).behind).toBeCloseTo(115 + 110, 9);
        expect(extent(place(level, 'compact-dynamic')).behind).toBeCloseTo(80 + 40, 9);
        expect(extent(place(level, 'mini-clip')).behind).toBeCloseTo(45 + 20, 9);
      }),
    );
  });

  it('M2: a side-address body is as long as the mic, across its axis', () => {
    fc.assert(
      fc.property(anyStand, (mount) => {
        const placed = place(mount, 'side-condenser');
        const [body] = parts(placed, 'body');
        if (!body) throw new Error('no body');
        const way = subtract(body.b, body.a);
        expect(dot(way, placed.axis)).toBeCloseTo(0, 9);
        expect(length(way) + 2 * body.radius).toBeCloseTo(180, 9);
      }),
    );
  });

  it('M6: on a level head the tip and axis of a clip mic are as worked by hand', () => {
    const snare = { ...rackTom, id: 'snare', x: 0, y: 400, z: 660, tilt: 0, diameter: 356 };
    const layout = { ...fivePiece, pieces: [snare] };
    const at = (angle: number, pitch: number) =>
      placeMic(micOn({ ...straightClip, angle, pitch }), layout);
    expect(at(90, 0).tip).toEqual(vec(0, 400 + 178 - 30, 660 + 45));
    expect(at(0, 0).axis.x).toBe(-1);
    expect(at(0, 90).axis.z).toBe(-1);
    expect(at(90, 30).axis.z).toBeCloseTo(-0.5, 12);
  });

  it('M6: the tip keeps its height over the head and its reach inside the rim on a tilted drum', () => {
    fc.assert(
      fc.property(anyClip('rack-2'), (mount) => {
        const head = surfaceOf(rackTom);
        const offset = subtract(place(mount).tip, head.centre);
        const over = dot(offset, head.normal);
        expect(over).toBeCloseTo(mount.height, 9);
        expect(Math.sqrt(dot(offset, offset) - over * over)).toBeCloseTo(
          head.radius - mount.reach,
          6,
        );
      }),
    );
  });

  it('a clip mic moves with its drum, by the same vector', () => {
    const shift = vec(64, -32, 16);
    fc.assert(
      fc.property(anyClip('rack-2'), anyClass, (mount, micClass) => {
        const moved = moveRackTom(fivePiece, shift);
        const here = placeMic(micOn(mount, micClass), fivePiece);
        const there = placeMic(micOn(mount, micClass), moved);
        expect(distance(there.tip, add(here.tip, shift))).toBeLessThan(1e-9);
        for (const [i, solid] of there.solids.entries()) {
          const before = here.solids[i]?.capsule;
          if (!before) throw new Error('a solid more');
          expect(distance(solid.capsule.a, add(before.a, shift))).toBeLessThan(1e-9);
          expect(distance(solid.capsule.b, add(before.b, shift))).toBeLessThan(1e-9);
        }
      }),
    );
  });

  it('M7: a side-address body on a clip stands up from the head, its connector at the upper end', () => {
    fc.assert(
      fc.property(anyClip('rack-2'), (mount) => {
        fc.pre(mount.pitch < 90);
        const placed = place(mount, 'side-condenser');
        const [body] = parts(placed, 'body');
        const [connector] = parts(placed, 'connector');
        if (!body || !connector) throw new Error('expected a body with a connector');
        const { centre, normal } = surfaceOf(rackTom);
        const above = (p: Vec3): number => dot(subtract(p, centre), normal);
        expect(above(body.b)).toBeGreaterThan(above(body.a));
        expect(above(connector.a)).toBeGreaterThan(above(body.b));
      }),
    );
  });

  it('M8, M9: the arm of a clip leads from the top outside of the hoop to the mic', () => {
    const [arm] = parts(place({ ...straightClip, drum: 'rack-2' }), 'clipArm');
    const head = surfaceOf(rackTom);
    if (!arm) throw new Error('no arm');
    const offset = subtract(arm.a, head.centre);
    const over = dot(offset, head.normal);
    expect(over).toBeCloseTo(rackTom.rim.height, 9);
    expect(Math.sqrt(dot(offset, offset) - over * over)).toBeCloseTo(
      head.radius + rackTom.rim.width,
      9,
    );
  });

  it('the base of a stand stays when its mic is moved, and the tip when its base is', () => {
    fc.assert(
      fc.property(anyStand, anyStand, (mount, other) => {
        const placed = place(mount);
        const micMoved = place({ ...mount, tip: other.tip });
        expect(micMoved.stand?.footprint).toEqual(placed.stand?.footprint);
        expect(micMoved.deckPoint).toEqual(placed.deckPoint);
        const baseMoved = place({ ...mount, base: other.base, turn: other.turn });
        expect(baseMoved.tip).toEqual(placed.tip);
        expect(parts(baseMoved, 'body')).toEqual(parts(placed, 'body'));
      }),
    );
  });

  it('M11: a side-address mic aimed level stands upright with its connector down', () => {
    const [body] = parts(place({ ...levelStand, pitch: 0 }, 'side-condenser'), 'body');
    if (!body) throw new Error('no body');
    expect(body.a.z - body.b.z).toBeCloseTo(180 - 50, 9);
    expect(distance({ ...body.a, z: 0 }, { ...body.b, z: 0 })).toBeLessThan(1e-9);
  });

  it('M12, M14: the boom leads from clutch to mic and on behind it, and the cable takes boom and mast', () => {
    const placed = place(levelStand);
    const [boom, tail] = parts(placed, 'boom');
    const { stand } = placed;
    if (!boom || !tail || !stand) throw new Error('no boom');
    expect(boom.a).toEqual(stand.clutch);
    expect(boom.b).toEqual(stand.hold);
    expect(distance(tail.a, boom.b)).toBeCloseTo(stand.boomLength + 100, 9);
    expect(placed.descent).toEqual([
      { along: 'boom', length: stand.boomLength },
      { along: 'mast', length: stand.clutch.z },
    ]);
    expect(placed.deckPoint).toEqual(levelStand.base);
  });

  it('M13, F3, F4: three legs run from the mast to the feet; a round base is a disc of bars, as thick as it is', () => {
    fc.assert(
      fc.property(anyStand, (mount) => {
        const placed = place(mount);
        const spec = standSpec(mount.stand);
        const bars = parts(placed, 'base');
        const { feet, hub, hubRadius } = placed.stand?.footprint ?? {
          feet: [],
          hub: mount.base,
          hubRadius: 0,
        };
        expect(hub).toEqual({ x: mount.base.x, y: mount.base.y });
        const out = (p: Vec3): number => Math.hypot(p.x - hub.x, p.y - hub.y);
        if (spec.base === 'tripod') {
          expect(feet).toHaveLength(3);
          expect(bars.map(({ b }) => [b.x, b.y])).toEqual(feet.map(({ x, y }) => [x, y]));
          for (const { a, b, radius } of bars) {
            expect([out(a), a.z]).toEqual([0, spec.legHeight]);
            expect(out(b)).toBeCloseTo(spec.footRadius, 9);
            expect(b.z - radius).toBe(0);
          }
          return;
        }
        expect(feet).toEqual([]);
        expect(hubRadius).toBe(spec.footRadius);
        expect(bars).toHaveLength(4);
        for (const { a, b, radius } of bars) {
          expect(2 * radius).toBe(spec.legHeight);
          expect([a.z, b.z]).toEqual([radius, radius]);
          expect(out(a) + radius).toBeCloseTo(spec.footRadius, 9);
          expect(out(b) + radius).toBeCloseTo(spec.footRadius, 9);
        }
      }),
    );
  });

  it('M10: from a rim the cable goes to the stand, the nearest leg, or over the kick to a spur', () => {
    const down = (drum: string, angle: number) => place({ ...straightClip, drum, angle });
    const snare = down('snare', 90);
    const [, over, mast] = snare.descent;
    const [arm] = parts(snare, 'clipArm');
    if (!arm) throw new Error('no arm');
    expect(over?.length).toBeCloseTo(
      Math.hypot(arm.a.x - snare.deckPoint.x, arm.a.y - snare.deckPoint.y),
      9,
    );
    expect(mast?.length).toBeCloseTo(arm.a.z, 9);
    expect(down('floor', 30).deckPoint).not.toEqual(down('floor', 180).deckPoint);
    expect(down('rack-1', 90).descent.map((part) => part.along)).toEqual(['arm', 'drum', 'shell']);
    expect(down('rack-1', 90).deckPoint.x).toBeLessThan(down('rack-2', 90).deckPoint.x);
  });

  it('M10: a chain of carriers that leads nowhere lets the cable hang', () => {
    const lost = {
      ...fivePiece,
      pieces: [{ ...rackTom, support: { kind: 'held' as const, by: 'gone' } }],
    };
    const placed = placeMic(micOn({ ...straightClip, drum: rackTom.id }), lost);
    expect(placed.descent.map((part) => part.along)).toEqual(['arm', 'air']);
  });

  it('M15, M16: a plate in a kick lies inside the shell at its bottom and its cable leaves by the port', () => {
    const placed = place({ kind: 'plateInKick', kick: 'kick', depth: 220 }, 'boundary-plate');
    const kick = fivePiece.pieces.find(({ id }) => id === 'kick');
    if (kick?.kind !== 'kick' || !kick.port) throw new Error('no kick with a port');
    expect(placed.tip.y).toBeCloseTo(kick.y + kick.depth / 2 - 220, 9);
    for (const { a, b, radius } of parts(placed, 'plate')) {
      for (const p of [a, b]) {
        const fromAxis = Math.hypot(p.x - kick.x, p.z - kick.z) + radius;
        expect(fromAxis).toBeLessThanOrEqual(kick.diameter / 2 + 1e-9);
      }
    }
    // Both of its edges touch the shell.
    const outermost = parts(placed, 'plate').map(
      ({ a, radius }) => Math.hypot(a.x - kick.x, a.z - kick.z) + radius,
    );
    expect(outermost[0]).toBeCloseTo(kick.diameter / 2, 9);
    expect(outermost.at(-1)).toBeCloseTo(kick.diameter / 2, 9);
    expect(placed.tip.z).toBeLessThan(kick.z);
    expect(placed.descent.map((part) => part.along)).toEqual(['kick', 'air']);
    expect(placed.deckPoint.y).toBeCloseTo(kick.y + kick.depth / 2 + kick.rim.height + 50, 9);
    // The cable as worked by hand: a plate of 130 mm ends 90 mm behind the front head; from there aside to the port and over its lower edge.
    const { diameter, right, up } = kick.port;
    expect([kick.turn, kick.rise]).toEqual([90, 0]);
    const edge = kick.z + up - diameter / 2;
    expect(placed.descent[0]?.length).toBeCloseTo(Math.hypot(right, 90, edge - placed.tip.z), 9);
    expect(placed.descent[1]?.length).toBeCloseTo(Math.hypot(kick.rim.height + 50, edge), 9);
  });

  it('M15, M17: a plate on the deck covers its length and width', () => {
    const placed = place({ kind: 'plateOnDeck', x: 100, y: 900, turn: 90 }, 'boundary-plate');
    const bars = parts(placed, 'plate');
    const across = bars.flatMap(({ a, radius }) => [a.x - radius, a.x + radius]);
    expect([Math.min(...across), Math.max(...across)]).toEqual([100 - 45, 100 + 45]);
    expect(Math.max(...bars.map(({ a, radius }) => a.y + radius))).toBeCloseTo(900, 9);
    expect(Math.min(...bars.map(({ b, radius }) => b.y - radius))).toBeCloseTo(900 - 130, 9);
    expect(Math.min(...bars.map(({ a, radius }) => a.z - radius))).toBe(0);
    expect(placed.descent).toEqual([]);
    expect(placed.deckPoint.x).toBeCloseTo(100, 9);
    expect(placed.deckPoint.y).toBeCloseTo(900 - 130, 9);
  });

  it('M15, M17: a plate of any width lies on the deck and is as wide as it is', () => {
    const plate = findMicClass(fivePiece, 'boundary-plate');
    if (!plate) throw new Error('no plate');
    const mount = { kind: 'plateOnDeck', x: 0, y: 900, turn: 90 } as const;
    for (const diameter of [5, 8, 12, 18, 25, 60, 200]) {
      const own = { ...plate, id: 'own', diameter };
      const placed = placeMic(micOn(mount, 'own'), { ...fivePiece, ownClasses: [own] });
      const bars = parts(placed, 'plate');
      expect(Math.min(...bars.map(({ a, radius }) => a.z - radius))).toBeCloseTo(0, 9);
      expect(Math.max(...bars.map(({ a, radius }) => a.x + radius))).toBeCloseTo(diameter / 2, 9);
      expect(Math.min(...bars.map(({ a, radius }) => a.x - radius))).toBeCloseTo(-diameter / 2, 9);
    }
  });

  it('M3: a mic is held two thirds of its length behind its front', () => {
    const placed = place(levelStand, 'long-dynamic');
    const micClass = findMicClass(fivePiece, 'long-dynamic');
    expect(distance(placed.stand?.hold ?? vec(0, 0, 0), placed.tip)).toBeCloseTo(
      ((micClass?.length ?? 0) * 2) / 3,
      9,
    );
  });

  it('says what it expected when a reference was not checked', () => {
    expect(() => place({ ...straightClip, drum: 'kick' })).toThrow(/drum of the layout, not kick/);
    expect(() => place(levelStand, 'no-such')).toThrow(/a known class, not no-such/);
  });
});

const levelStand: Extract<Mount, { kind: 'stand' }> = {
  kind: 'stand',
  stand: 'tripodMedium',
  base: { x: 800, y: 300 },
  turn: 0,
  mast: null,
  tip: { x: 300, y: 300, z: 900 },
  azimuth: 180,
  pitch: 0,
};

function moveRackTom(layout: Layout, shift: Vec3): Layout {
  return {
    ...layout,
    pieces: layout.pieces.map((piece) =>
      piece.id === 'rack-2' && isDrum(piece)
        ? { ...piece, x: piece.x + shift.x, y: piece.y + shift.y, z: piece.z + shift.z }
        : piece,
    ),
  };
}
