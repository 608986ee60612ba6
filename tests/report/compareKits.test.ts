import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip, moveMic, moveMicBase, setMicClass } from '../../src/layout/edit/mics.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import { moveKit, setPlayer } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { signedText } from '../../src/layout/signed.ts';
import {
  compareKits,
  isUnchanged,
  type KitChanges,
  placedKit,
} from '../../src/report/compareKits.ts';
import { randomKit } from '../support/randomKit.ts';

const kit = STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks')?.make('kit') as Layout;
const compare = (before: Layout, after: Layout) => compareKits(placedKit(before), placedKit(after));

const swapped = ({ player, pieces, mics }: KitChanges) => {
  const back = { new: 'gone', gone: 'new', changed: 'changed' } as const;
  const turn = (things: KitChanges['mics']) =>
    things
      .map(({ id, change, moved, turned, base, fields }) => ({
        id,
        change: back[change],
        sizes: [moved, turned, base].map((size) => size.toFixed(6)),
        fields: fields.length,
      }))
      .toSorted((p, q) => (p.id < q.id ? -1 : 1));
  return { player: player.length, pieces: turn(pieces), mics: turn(mics) };
};
const straight = (changes: KitChanges) => {
  const turn = (things: KitChanges['mics']) =>
    things
      .map(({ id, change, moved, turned, base, fields }) => ({
        id,
        change,
        sizes: [moved, turned, base].map((size) => size.toFixed(6)),
        fields: fields.length,
      }))
      .toSorted((p, q) => (p.id < q.id ? -1 : 1));
  return { player: changes.player.length, pieces: turn(changes.pieces), mics: turn(changes.mics) };
};

describe('laws', () => {
  test('no change exactly when the signed texts are equal (V1, V3)', () => {
    fc.assert(
      fc.property(randomKit, fc.nat(), fc.boolean(), (layout, which, move) => {
        const piece = layout.pieces[which % layout.pieces.length];
        const after =
          move && piece && 'x' in piece
            ? movePiece(layout, piece.id, { x: piece.x + 7, y: piece.y })
            : structuredClone(layout);
        const equal = signedText(layout) === signedText(after);
        expect(isUnchanged(compare(layout, after))).toBe(equal);
      }),
      { numRuns: 40 },
    );
  });

  test('swapped, the same things are changed by the same distances and angles (V3)', () => {
    fc.assert(
      fc.property(randomKit, randomKit, (before, after) => {
        expect(swapped(compare(after, before))).toEqual(straight(compare(before, after)));
      }),
      { numRuns: 30 },
    );
  });

  test('a kit moved and turned whole on its deck has not changed (V2)', () => {
    expect(isUnchanged(compare(kit, moveKit(kit, { x: 300, y: -200, turn: 20 })))).toBe(true);
  });
});

describe('cases by hand', () => {
  test('a stand moved by 30 mm and 40 mm moved by 50 mm with its base', () => {
    const stand = kit.mics.find(({ mount }) => mount.kind === 'stand');
    const { mics, pieces } = compare(kit, moveMic(kit, stand?.id ?? '', { x: 30, y: 40 }));
    expect(pieces).toEqual([]);
    expect(mics).toMatchObject([{ id: stand?.id, change: 'changed', turned: 0 }]);
    expect(mics[0]?.moved).toBeCloseTo(50, 6);
    expect(mics[0]?.base).toBeCloseTo(50, 6);
  });

  test('a base moved alone leaves the mic where it is', () => {
    const stand = kit.mics.find(({ mount }) => mount.kind === 'stand');
    const spot = stand?.mount.kind === 'stand' ? stand.mount.base : { x: 0, y: 0 };
    const { mics } = compare(kit, moveMicBase(kit, stand?.id ?? '', { x: spot.x, y: spot.y + 25 }));
    expect(mics).toMatchObject([{ id: stand?.id, moved: 0, turned: 0 }]);
    expect(mics[0]?.base).toBeCloseTo(25, 6);
  });

  test('a clip on a level head turned by 90 degrees goes its chord, and turns by 90 on the plan', () => {
    const drum = kit.pieces.find(({ id }) => id === 'snare');
    if (drum?.kind !== 'snare') throw new Error('the kit has a snare');
    const level = {
      ...kit,
      pieces: kit.pieces.map((p) => (p.id === 'snare' ? { ...drum, tilt: 0 } : p)),
    };
    const clip = level.mics.find(({ mount }) => mount.kind === 'clip' && mount.drum === 'snare');
    const base = clip ? level : { ...level, mics: [clipOnSnare, ...level.mics] };
    const id = clip?.id ?? clipOnSnare.id;
    const mount = base.mics.find((mic) => mic.id === id)?.mount;
    if (mount?.kind !== 'clip') throw new Error('it is a clip');
    const flat = changeClip(base, id, { pitch: 0 });
    const { mics } = compare(flat, changeClip(flat, id, { angle: mount.angle + 90 }));
    const out = drum.diameter / 2 - mount.reach;
    expect(mics.map((mic) => mic.id)).toEqual([id]);
    expect(mics[0]?.moved).toBeCloseTo(Math.SQRT2 * out, 3);
    expect(mics[0]?.turned).toBeCloseTo(90, 3);
  });

  test('a clip goes with its drum, and none of its own fields are changed', () => {
    const rack = kit.pieces.find(({ id }) => id === 'rack-1');
    if (rack?.kind !== 'rackTom') throw new Error('the kit has a rack tom');
    const after = movePiece(kit, 'rack-1', { x: rack.x + 12, y: rack.y + 5 });
    const { mics, pieces } = compare(kit, after);
    expect(pieces).toMatchObject([{ id: 'rack-1' }]);
    expect(pieces[0]?.moved).toBeCloseTo(13, 6);
    expect(mics).toMatchObject([{ id: 'mic-rack-1', fields: [] }]);
    expect(mics[0]?.moved).toBeCloseTo(13, 6);
  });

  test('what came and what went, what another class and another player are', () => {
    const after = setPlayer(
      setMicClass({ ...kit, mics: kit.mics.slice(1) }, 'mic-rack-1', 'mini-clip'),
      { stature: 1820 },
    );
    const { mics, player } = compare(kit, after);
    expect(player).toEqual([{ path: 'stature', before: kit.player.stature, after: 1820 }]);
    expect(mics.find(({ change }) => change === 'gone')?.id).toBe(kit.mics[0]?.id);
    expect(mics.find(({ id }) => id === 'mic-rack-1')?.fields.map(({ path }) => path)).toEqual([
      'micClass',
    ]);
    expect(compare(after, kit).mics.find(({ change }) => change === 'new')?.id).toBe(
      kit.mics[0]?.id,
    );
  });
});

const clipOnSnare = {
  id: 'mic-clip',
  name: 'Clip',
  micClass: 'compact-dynamic',
  hears: ['snare'],
  input: null,
  mount: {
    kind: 'clip',
    drum: 'snare',
    material: 'rubber',
    angle: 10,
    reach: 20,
    height: 40,
    pitch: 0,
  },
} satisfies Layout['mics'][number];
