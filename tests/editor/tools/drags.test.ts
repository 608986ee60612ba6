import { describe, expect, test } from 'vitest';
import type { Drag, Hold, Place } from '../../../src/editor/tools/drag.ts';
import { turnedAbout } from '../../../src/editor/tools/drag.ts';
import { dragHub, dragPieceFeet, dragTripod } from '../../../src/editor/tools/dragFeet.ts';
import { dragLean, PX_PER_DEGREE } from '../../../src/editor/tools/dragLean.ts';
import {
  dragAim,
  dragBase,
  dragPlate,
  dragTip,
  dragWholeMic,
} from '../../../src/editor/tools/dragMic.ts';
import { dragPiece, dragTurn } from '../../../src/editor/tools/dragPiece.ts';
import { dragBox, dragBoxTurn, dragKit, dragKitTurn } from '../../../src/editor/tools/dragStage.ts';
import type { Vec2 } from '../../../src/geometry/vector.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { toDeck } from '../../../src/rig/deckFrame.ts';
import { placeMic } from '../../../src/rig/placeMic.ts';
import { kit, micAfter, pieceAfter, pieceOf, standMic } from '../support.ts';

const layout = kit('five-piece-two-racks');
const SCALE = 0.25;
const place = (spot: Vec2, of: Layout = layout): Place => ({
  kit: spot,
  deck: toDeck(of.deck, spot),
});
const holdAt = (spot: Vec2): Hold => ({
  from: place(spot),
  near: 20,
  pxPerMm: SCALE,
  ring: () => null,
  nameOf: ({ name }) => `${name} mic`,
});
/** The layout after a drag to a spot. */
const dragged = (drag: Drag, spot: Vec2): Layout => drag.to(place(spot))(layout);

describe('drags', () => {
  test('each names itself for undo, and gives the layout back where it took hold', () => {
    const snare = pieceOf(layout, 'snare');
    const { mic, mount } = standMic(layout);
    const placed = placeMic(mic, layout);
    const at = { x: 300, y: 500 };
    const hold = holdAt(at);
    const drags: readonly Drag[] = [
      dragPiece(snare, hold),
      dragTurn(pieceOf(layout, 'pedal'), hold),
      dragLean(snare, hold),
      dragHub(snare, hold),
      dragTip(placed, hold),
      dragBase(mic, mount, hold),
      dragWholeMic(mic, hold),
      dragAim(placed, mount.azimuth, hold),
      dragTripod(mic, mount, hold),
      dragBox(layout.box, hold),
      dragBoxTurn(layout.box, hold),
      dragKit(layout.deck, hold),
      dragKitTurn(layout.deck, hold),
    ];
    expect(new Set(drags.map(({ label }) => label)).size).toBe(drags.length);
    for (const drag of drags) expect(dragged(drag, at), drag.label).toEqual(layout);
    const ofMic = drags.filter(({ label }) => label.includes(`${mic.name} mic`));
    expect(ofMic).toHaveLength(5);
  });

  test('a piece moves as far as the finger, wherever on it the finger took hold', () => {
    const snare = pieceOf(layout, 'snare');
    const moved = dragged(dragPiece(snare, holdAt({ x: snare.x + 60, y: snare.y - 30 })), {
      x: snare.x + 160,
      y: snare.y + 20,
    });
    expect(pieceAfter(moved, snare.id)).toMatchObject({ x: snare.x + 100, y: snare.y + 50 });
  });

  test('clips follow their drum', () => {
    const clipped = layout.mics.find(({ mount }) => mount.kind === 'clip');
    if (clipped?.mount.kind !== 'clip') throw new Error('expected a clip');
    const drum = pieceAfter(layout, clipped.mount.drum);
    const start = 'x' in drum ? { x: drum.x, y: drum.y } : { x: 0, y: 0 };
    const moved = dragged(dragPiece(drum, holdAt(start)), { x: start.x + 120, y: start.y - 70 });
    const [before, now] = [placeMic(clipped, layout), placeMic(micAfter(moved, clipped.id), moved)];
    expect(now.tip.x - before.tip.x).toBeCloseTo(120, 6);
    expect(now.tip.y - before.tip.y).toBeCloseTo(-70, 6);
  });

  test('the throne takes the kit frame along: everything else stays on the deck', () => {
    const throne = pieceOf(layout, 'throne');
    const moved = dragged(dragPiece(throne, holdAt({ x: 0, y: 0 })), { x: 40, y: -80 });
    const snare = pieceOf(layout, 'snare');
    const now = pieceAfter(moved, snare.id);
    if (!('x' in now)) throw new Error('expected a snare');
    const [was, is] = [toDeck(layout.deck, snare), toDeck(moved.deck, now)];
    expect(Math.hypot(was.x - is.x, was.y - is.y)).toBeLessThan(1e-5);
    expect(moved.deck.kit.x - layout.deck.kit.x).toBeCloseTo(40, 6);
  });

  test('a stand mic’s tip is dragged and its base stays; and the other way round', () => {
    const { mic, mount } = standMic(layout);
    const byTip = dragged(dragTip(placeMic(mic, layout), holdAt(mount.tip)), {
      x: mount.tip.x + 90,
      y: mount.tip.y + 40,
    });
    expect(micAfter(byTip, mic.id).mount).toMatchObject({
      base: mount.base,
      tip: { x: mount.tip.x + 90, y: mount.tip.y + 40, z: mount.tip.z },
    });
    const byBase = dragged(dragBase(mic, mount, holdAt(mount.base)), {
      x: mount.base.x - 50,
      y: mount.base.y + 10,
    });
    expect(micAfter(byBase, mic.id).mount).toMatchObject({
      base: { x: mount.base.x - 50, y: mount.base.y + 10 },
      tip: mount.tip,
    });
    const whole = dragged(dragWholeMic(mic, holdAt({ x: 0, y: 0 })), { x: 30, y: 60 });
    expect(micAfter(whole, mic.id).mount).toMatchObject({
      base: { x: mount.base.x + 30, y: mount.base.y + 60 },
      tip: { x: mount.tip.x + 30, y: mount.tip.y + 60 },
    });
  });

  test('a clip goes round its rim to where the finger is, and in and out', () => {
    const mic = layout.mics.find(({ mount }) => mount.kind === 'clip');
    if (mic?.mount.kind !== 'clip') throw new Error('expected a clip');
    const placed = placeMic(mic, layout);
    const to = { x: placed.tip.x + 60, y: placed.tip.y - 35 };
    const moved = dragged(dragTip(placed, holdAt(placed.tip)), to);
    const now = placeMic(micAfter(moved, mic.id), moved);
    expect(Math.hypot(now.tip.x - to.x, now.tip.y - to.y)).toBeLessThan(1);
    expect(micAfter(moved, mic.id).mount).toMatchObject({ kind: 'clip', drum: mic.mount.drum });
  });

  test('a plate slides along its kick only', () => {
    const mic = layout.mics.find(({ mount }) => mount.kind === 'plateInKick');
    if (mic?.mount.kind !== 'plateInKick') throw new Error('expected a plate in a kick');
    const kick = pieceOf(layout, 'kick');
    const drag = dragPlate(mic, mic.mount.depth, { ...kick, turn: 90 }, holdAt({ x: 0, y: 0 }));
    expect(micAfter(dragged(drag, { x: 80, y: -25 }), mic.id).mount).toMatchObject({
      depth: mic.mount.depth + 25,
    });
  });

  test('a lean grows outward by its px for a degree, and follows the finger round', () => {
    const crash = { ...pieceOf(layout, 'crash'), tilt: 12, tiltToward: 250, x: 0, y: 0 };
    const start = { x: 0, y: 300 };
    const drag = dragLean(crash, holdAt(start));
    const out = dragged(drag, { x: 0, y: 300 + (6.2 * PX_PER_DEGREE) / SCALE });
    expect(pieceAfter(out, crash.id)).toMatchObject({ tiltToward: 250 });
    expect(pieceAfter(out, crash.id)).toHaveProperty('tilt', expect.closeTo(18.2, 6));
    const round = dragged(drag, { x: -300, y: 0 });
    expect(pieceAfter(round, crash.id)).toHaveProperty('tiltToward', expect.closeTo(340, 6));
    const flat = dragged(drag, { x: 0, y: 20 });
    expect(pieceAfter(flat, crash.id)).toMatchObject({ tilt: 0 });
  });

  test('feet turn with the finger about their hub', () => {
    const { mic, mount } = standMic(layout);
    const { base } = mount;
    const drag = dragTripod(mic, mount, holdAt({ x: base.x + 200, y: base.y }));
    const turned = micAfter(dragged(drag, { x: base.x, y: base.y + 200 }), mic.id).mount;
    expect(turned).toHaveProperty('turn', expect.closeTo((mount.turn + 90) % 360, 6));
    const ride = pieceOf(layout, 'ride');
    if (ride.support.kind !== 'stand') throw new Error('expected a stand');
    const hub = { x: ride.x + ride.support.dx, y: ride.y + ride.support.dy };
    const feet = dragPieceFeet(
      ride,
      { hub, turn: ride.support.turn },
      holdAt({ x: hub.x, y: hub.y + 100 }),
    );
    const turnedRide = pieceAfter(dragged(feet, { x: hub.x - 100, y: hub.y }), ride.id);
    expect(turnedRide).toHaveProperty(
      'support.turn',
      expect.closeTo((ride.support.turn + 90) % 360, 6),
    );
  });

  test('the box moves on the deck, also when the kit is turned', () => {
    const drag = dragBox(layout.box, holdAt({ x: 0, y: 0 }));
    const moved = drag.to({ kit: { x: 0, y: 0 }, deck: toDeckPlus(100, -40) })(layout);
    expect(moved.box).toMatchObject({ x: layout.box.x + 100, y: layout.box.y - 40 });
  });

  test('a turn is measured the short way round', () => {
    const pivot = { x: 0, y: 0 };
    expect(turnedAbout(pivot, { x: 1, y: 0 }, { x: 0, y: 1 })).toBeCloseTo(90, 9);
    expect(turnedAbout(pivot, { x: -1, y: 0.1 }, { x: -1, y: -0.1 })).toBeCloseTo(11.42, 2);
    expect(turnedAbout(pivot, { x: -1, y: -0.1 }, { x: -1, y: 0.1 })).toBeCloseTo(-11.42, 2);
  });
});

const toDeckPlus = (x: number, y: number): Vec2<'deck'> => {
  const origin = toDeck(layout.deck, { x: 0, y: 0 });
  return { x: origin.x + x, y: origin.y + y };
};
