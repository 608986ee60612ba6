import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newPiece } from '../../../src/layout/catalogue/defaults/newPiece.ts';
import { fivePieceTwoRacks } from '../../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { changePiece } from '../../../src/layout/edit/change.ts';
import { duplicatePiece } from '../../../src/layout/edit/duplicatePiece.ts';
import {
  addPiece,
  heldBy,
  movePiece,
  raisePiece,
  renamePiece,
  resizePiece,
  tiltPiece,
  turnFeet,
  turnPiece,
} from '../../../src/layout/edit/pieces.ts';
import { deletePiece } from '../../../src/layout/edit/removePiece.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { isStruck, type Piece } from '../../../src/layout/pieces/piece.ts';
import { fromInches } from '../../../src/units/inch.ts';
import { randomKit } from '../../support/randomKit.ts';

const kit = fivePieceTwoRacks('kit');
const pieceOf = (layout: Layout, id: string): Piece => {
  const found = layout.pieces.find((piece) => piece.id === id);
  if (!found) throw new Error(`no piece ${id}`);
  return found;
};
const spotOf = (layout: Layout, id: string) => {
  const piece = pieceOf(layout, id);
  return piece.kind === 'throne' ? { x: 0, y: 0 } : { x: piece.x, y: piece.y };
};
const kitAndPiece = randomKit.chain((layout) =>
  fc.record({
    layout: fc.constant(layout),
    id: fc.constantFrom(...layout.pieces.map((piece) => piece.id)),
  }),
);
const step = fc.integer({ min: -500, max: 500 });

describe('moving', () => {
  test('there and back is where it was, for a piece and all it holds', () => {
    fc.assert(
      fc.property(kitAndPiece, step, step, ({ layout, id }, dx, dy) => {
        fc.pre(pieceOf(layout, id).kind !== 'throne');
        const from = spotOf(layout, id);
        const there = movePiece(layout, id, { x: from.x + dx, y: from.y + dy });
        expect(movePiece(there, id, from)).toEqual(layout);
      }),
      { numRuns: 60 },
    );
  });

  test('what the hardware holds goes along by the same way, all else stays', () => {
    const moved = movePiece(kit, 'kick', { x: 200, y: 1030 });
    const way = (id: string) => {
      const [before, after] = [spotOf(kit, id), spotOf(moved, id)];
      return [after.x - before.x, after.y - before.y];
    };
    for (const id of ['kick', 'rack-1', 'rack-2']) expect([id, way(id)]).toEqual([id, [50, -30]]);
    expect(pieceOf(moved, 'snare')).toBe(pieceOf(kit, 'snare'));
    expect(moved.mics).toBe(kit.mics);
  });

  test('holders of holders count too', () => {
    const large = largeKit('large');
    const held = changePiece(large, 'splash', (piece) =>
      piece.kind === 'splash' ? { ...piece, support: { kind: 'held', by: 'rack-1' } } : piece,
    );
    expect(heldBy(held, 'crash-1').toSorted()).toEqual(['rack-1', 'splash']);
  });
});

describe('turning', () => {
  test('there and back is where it was', () => {
    fc.assert(
      fc.property(kitAndPiece, fc.integer({ min: -360, max: 360 }), ({ layout, id }, by) => {
        const back = turnPiece(turnPiece(layout, id, by), id, -by);
        const [now, then] = [pieceOf(back, id), pieceOf(layout, id)];
        if (isStruck(now) && isStruck(then) && now.support.kind === 'stand') {
          expect(then.support.kind).toBe('stand');
          if (then.support.kind !== 'stand') return;
          expect(now.support.dx).toBeCloseTo(then.support.dx, 4);
          expect(now.support.dy).toBeCloseTo(then.support.dy, 4);
          expect(now.tiltToward).toBeCloseTo(then.tiltToward, 5);
        } else {
          expect(now).toEqual(then);
        }
        expect(back.mics).toEqual(layout.mics);
      }),
      { numRuns: 60 },
    );
  });

  test('a clip goes round with its drum', () => {
    const angleOf = (layout: Layout) => {
      const mount = layout.mics.find(({ id }) => id === 'mic-floor-tom')?.mount;
      return mount?.kind === 'clip' ? mount.angle : undefined;
    };
    expect(angleOf(kit)).toBe(60);
    expect(angleOf(turnPiece(kit, 'floor', 330))).toBe(30);
  });

  test('feet alone turn under a piece that stays', () => {
    const turned = turnFeet(kit, 'ride', 75);
    expect(pieceOf(turned, 'ride')).toEqual({
      ...pieceOf(kit, 'ride'),
      support: { kind: 'stand', dx: 160, dy: 70, legs: 3, spread: 320, turn: 75 },
    });
  });
});

describe('limits', () => {
  test('a value beyond its limit stops at it', () => {
    expect(pieceOf(resizePiece(kit, 'rack-1', 20_000), 'rack-1')).toMatchObject({ diameter: 800 });
    expect(pieceOf(resizePiece(kit, 'rack-1', 0), 'rack-1')).toMatchObject({ diameter: 100 });
    expect(pieceOf(raisePiece(kit, 'ride', 9999), 'ride')).toMatchObject({ z: 4000 });
    expect(pieceOf(tiltPiece(kit, 'ride', 120), 'ride')).toMatchObject({ tilt: 90 });
    expect(spotOf(movePiece(kit, 'ride', { x: 1e9, y: 0 }), 'ride').x).toBe(20_000);
  });

  test('what is no number or no name changes nothing', () => {
    expect(raisePiece(kit, 'ride', Number.NaN)).toBe(kit);
    expect(renamePiece(kit, 'ride', '')).toBe(kit);
  });

  test('a name longer than 80 characters is cut', () => {
    expect(pieceOf(renamePiece(kit, 'ride', 'r'.repeat(100)), 'ride').name).toHaveLength(80);
  });

  test('pieces end at 80', () => {
    let layout = kit;
    for (let n = 0; n < 100; n += 1) layout = addPiece(layout, newPiece('splash', layout));
    expect(layout.pieces).toHaveLength(80);
    expect(addPiece(layout, newPiece('splash', layout))).toBe(layout);
  });

  test('a second throne is not added, nor a copy of the first', () => {
    expect(addPiece(kit, newPiece('throne', kit))).toBe(kit);
    expect(duplicatePiece(kit, 'throne')).toBe(kit);
  });

  test('a drum becomes another kind of drum, not a cymbal', () => {
    const asFloorTom = changePiece(kit, 'rack-1', (piece) =>
      piece.kind === 'rackTom' ? { ...piece, kind: 'floorTom' } : piece,
    );
    expect(pieceOf(asFloorTom, 'rack-1').kind).toBe('floorTom');
    expect(changePiece(kit, 'rack-1', () => pieceOf(kit, 'ride'))).toBe(kit);
  });

  test('no piece comes to hold itself, at once or in a circle', () => {
    const held = (layout: Layout, id: string, by: string) =>
      changePiece(layout, id, (piece) =>
        piece.kind === 'rackTom' ? { ...piece, support: { kind: 'held', by } } : piece,
      );
    expect(held(kit, 'rack-1', 'rack-1')).toBe(kit);
    const one = held(kit, 'rack-1', 'rack-2');
    expect(one).not.toBe(kit);
    expect(held(one, 'rack-2', 'rack-1')).toBe(one);
    expect(held(kit, 'rack-1', 'nobody')).toBe(kit);
  });
});

test('a kick of another size still stands on its spurs', () => {
  const kick = pieceOf(resizePiece(kit, 'kick', fromInches(26), fromInches(14)), 'kick');
  expect(kick).toMatchObject({ diameter: fromInches(26), depth: fromInches(14) });
  expect(kick.kind === 'kick' && kick.z - kick.diameter / 2).toBeCloseTo(25, 6);
});

describe('a copy', () => {
  test('is the last piece, with an id and a name of its own, beside the first', () => {
    const copied = duplicatePiece(kit, 'rack-1');
    const copy = copied.pieces.at(-1);
    expect(copy).toMatchObject({
      kind: 'rackTom',
      id: 'rack-3',
      name: 'Rack tom 3',
      diameter: 254,
    });
    expect(copied.pieces.slice(0, -1)).toEqual(kit.pieces);
    const [a, b] = [spotOf(copied, 'rack-1'), spotOf(copied, 'rack-3')];
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(254);
  });
});

describe('deleting', () => {
  test('a drum takes its clips with it and is no longer heard', () => {
    const without = deletePiece(kit, 'rack-1');
    expect(without.mics.map(({ id }) => id)).not.toContain('mic-rack-1');
    expect(without.mics).toHaveLength(kit.mics.length - 1);
    const noSnare = deletePiece(kit, 'snare');
    expect(noSnare.mics.filter(({ hears }) => hears.includes('snare'))).toEqual([]);
    expect(noSnare.mics).toHaveLength(kit.mics.length);
  });

  test('a kick takes its plate with it, and the toms on it get stands of their own', () => {
    const without = deletePiece(kit, 'kick');
    expect(without.mics.map(({ id }) => id)).not.toContain('mic-kick-plate');
    expect(without.mics.map(({ id }) => id)).toContain('mic-kick-in');
    for (const id of ['rack-1', 'rack-2']) {
      expect(pieceOf(without, id)).toMatchObject({ support: { kind: 'stand' } });
    }
  });

  test('what it does not concern keeps its identity', () => {
    const without = deletePiece(kit, 'crash-1');
    expect(pieceOf(without, 'snare')).toBe(pieceOf(kit, 'snare'));
    const micOf = (layout: Layout) => layout.mics.find(({ id }) => id === 'mic-snare');
    expect(micOf(without)).toBe(micOf(kit));
  });

  test('an added piece is taken away again without a trace', () => {
    const added = addPiece(kit, newPiece('china', kit));
    const id = added.pieces.at(-1)?.id ?? '';
    expect(deletePiece(added, id)).toEqual(kit);
  });
});
