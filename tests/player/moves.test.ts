import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/vector.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isStruck } from '../../src/layout/pieces/piece.ts';
import { POSITION } from '../../src/player/arm.ts';
import { mirrored, plays, signOf } from '../../src/player/hands.ts';
import type { Move } from '../../src/player/move.ts';
import { createPlaying, playingOf } from '../../src/player/moves.ts';
import { oracleMotion } from '../support/motionOracle.ts';
import { randomKit } from '../support/randomKit.ts';
import { asKind, average, levelDrum, pointsAt } from './arms.ts';

const keyOf = ({ side, from, on }: Pick<Move, 'side' | 'from' | 'on'>): string =>
  `${side}: ${from ?? 'stroke'} > ${on}`;
const kits: readonly Layout[] = STARTING_KITS.map((kit) => kit.make(kit.key));

describe('one kit after another', () => {
  it('has the moves of a fresh start, and keeps those between pieces that did not change', () => {
    for (const { player, pieces } of kits) {
      const playingFor = createPlaying();
      const first = playingFor(player, pieces);
      const moved = pieces.find(isStruck);
      const kit = pieces.map((piece) =>
        piece === moved && isStruck(piece) ? { ...piece, x: piece.x + 40 } : piece,
      );
      const second = playingFor(player, kit);
      expect(second.moves.map(keyOf)).toEqual(playingOf(player, kit).moves.map(keyOf));
      for (const [i, move] of second.moves.entries()) {
        const touchesMoved = move.on === moved?.id || move.from === moved?.id;
        expect(first.moves[i] === move).toBe(!touchesMoved);
      }
      expect(playingFor({ ...player, stature: player.stature + 10 }, kit).arm).not.toBe(second.arm);
    }
  });
});

describe('rule M6: which moves there are', () => {
  const drum = (id: string) => ({ ...levelDrum(100, 500, 700), id });

  it('both hands play every piece, but only the lead hand a ride: strokes first, the lead hand before the other', () => {
    const ride = { ...asKind('ride', drum('ride')), hands: 'lead' as const };
    const moves = playingOf(average, [drum('a'), ride]).moves.map(keyOf);
    expect(moves).toEqual([
      'right: stroke > a',
      'right: stroke > ride',
      'left: stroke > a',
      'right: a > ride',
      'right: ride > a',
    ]);
    const left = playingOf({ ...average, leadHand: 'left' }, [drum('a'), ride]).moves.map(keyOf);
    expect(left).toEqual([
      'left: stroke > a',
      'left: stroke > ride',
      'right: stroke > a',
      'left: a > ride',
      'left: ride > a',
    ]);
  });

  it('two hands on n pieces: 2 n strokes and 2 n (n - 1) travels, none twice', () => {
    const pieces = ['a', 'b', 'c', 'd', 'e'].map(drum);
    const keys = playingOf(average, pieces).moves.map(keyOf);
    expect(keys).toHaveLength(2 * 5 + 2 * 5 * 4);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it.each([
    ['both', 'right', 'right', true],
    ['both', 'left', 'right', true],
    ['lead', 'right', 'right', true],
    ['lead', 'left', 'right', false],
    ['lead', 'left', 'left', true],
    ['right', 'right', 'left', true],
    ['right', 'left', 'left', false],
    ['left', 'left', 'right', true],
    ['none', 'right', 'right', false],
    ['none', 'left', 'left', false],
  ] as const)('hands %s: the %s hand, %s leading: %s', (hands, side, lead, answer) => {
    expect(plays(side, hands, lead)).toBe(answer);
  });

  it('kick, pedals and throne are not played by hands', () => {
    const [kit] = kits;
    const feet = kit?.pieces.filter((piece) => !isStruck(piece)) ?? [];
    expect(feet.map(({ kind }) => kind)).toContain('pedal');
    expect(playingOf(average, feet).moves).toEqual([]);
  });
});

/** An elbow is ill-conditioned where the arm folds or hangs straight: the angle there is the root of a rounding error. */
const ROUNDING = { elbow: 1e-3, grip: 1e-6, butt: 1e-6, tip: 1e-6 };
const NAMES = ['elbow', 'grip', 'butt', 'tip'] as const;

/** All positions agree with those of the second implementation. */
function expectAgreement({ player, pieces }: Pick<Layout, 'player' | 'pieces'>): void {
  const { moves } = playingOf(player, pieces);
  const oracle = new Map(
    oracleMotion(player, pieces).moves.map((move) => [keyOf({ ...move, side: move.hand }), move]),
  );
  expect(moves.map(keyOf).toSorted()).toEqual([...oracle.keys()].toSorted());
  const apart = moves.flatMap((move) =>
    [0, 0.13, 0.5, 0.77, 1].flatMap((t) => {
      const here = pointsAt(move, t);
      const there = oracle.get(keyOf(move))?.at(t);
      return NAMES.flatMap((name) => {
        const off = there && distance(mirrored(here[name], signOf(move.side)), there[name]);
        const same = off !== undefined && off < ROUNDING[name];
        return same ? [] : [`${keyOf(move)}: ${name} at ${t} off by ${off} mm`];
      });
    }),
  );
  expect(apart).toEqual([]);
}

describe('rules S1 to M5 against a second implementation', () => {
  it.each(kits.map((kit) => [kit.name, kit] as const))('%s', (_, kit) => {
    expectAgreement(kit);
  });

  it('random kits', () => {
    fc.assert(fc.property(randomKit, expectAgreement), { numRuns: 150, endOnFailure: true });
  });
});

/** Positions of all moves at a few times, as text: bit for bit, but for the sign of 0. */
function positionsText({ player, pieces }: Pick<Layout, 'player' | 'pieces'>): string[] {
  const row = new Float64Array(POSITION);
  return playingOf(player, pieces).moves.map((move) => {
    const rows = [0, 0.3, 0.5, 1].map((t) => {
      move.write(t, row, 0);
      return [...row].map((value) => value + 0).join(' ');
    });
    const { from, on, speed, bend } = move;
    return JSON.stringify({ from, on, rows, speed, bend });
  });
}

describe('a mirrored kit with the other hand leading', () => {
  it.each(kits.map((kit) => [kit.name, kit] as const))(
    'has exactly mirrored moves: %s',
    (_, kit) => {
      expect(positionsText(mirrorKit(kit))).toEqual(positionsText(kit));
    },
  );

  it('has exactly mirrored moves: random kits', () => {
    fc.assert(
      fc.property(randomKit, (kit) => {
        expect(positionsText(mirrorKit(kit))).toEqual(positionsText(kit));
      }),
      { numRuns: 60 },
    );
  });

  it('swaps the sides', () => {
    for (const kit of kits) {
      const sides = ({ player, pieces }: Layout) =>
        playingOf(player, pieces).moves.map(({ side }) => side);
      const swapped = sides(kit).map((side) => (side === 'right' ? 'left' : 'right'));
      expect(sides(mirrorKit(kit))).toEqual(swapped);
    }
  });
});
