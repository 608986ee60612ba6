import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aimDistance, aimedAt, turnOf } from '../../src/clearance/aimPoint.ts';
import { heldMove, type StandMove, StandMoves } from '../../src/clearance/standMoves.ts';
import {
  add,
  along,
  distance,
  dot,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import type { StandMount } from '../../src/layout/mics/mount.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { placeStandMic } from '../../src/rig/mics/standMic.ts';
import type { MicSolid, PlacedMic, PlacedStand } from '../../src/rig/placed.ts';
import { cosDeg, sinDeg, toRadians } from '../../src/units/angle.ts';
import { startingKits } from './kits.ts';

/** How far ahead what a mic looks at is, mm. */
const AHEAD = 250;
/** Angles and places of a moved mic are tidied to a few decimals, mm. */
const TIDIED = 1e-2;

interface Held {
  readonly placed: PlacedMic;
  readonly mount: StandMount;
  readonly stand: PlacedStand;
  readonly aim: Vec3;
}

/** Mics on booms that turn with what they look at; those of another body spin besides, which is the families' to test. */
const held: readonly Held[] = startingKits.flatMap((layout) =>
  buildRig(layout).mics.flatMap((placed): Held[] => {
    const { mic, micClass, stand, tip, axis } = placed;
    const { mount } = mic;
    if (mount.kind !== 'stand' || !stand || stand.boomLength === 0) return [];
    if (micClass.address === 'side' || Math.abs(axis.z) > 0.9) return [];
    return [{ placed, mount, stand, aim: along(tip, axis, AHEAD) }];
  }),
);

/** What is done to a mic: its tip shifted, with its aim kept, and its base turned about the place where the tip was, degrees. */
interface Done {
  readonly shift: Vec3;
  readonly turn: number;
}

function placedAfter({ placed, mount, aim }: Held, { shift, turn }: Done): PlacedMic {
  const tip = add(placed.tip, shift);
  const [cos, sin] = [cosDeg(turn), sinDeg(turn)];
  const [x, y] = [mount.base.x - placed.tip.x, mount.base.y - placed.tip.y];
  const base = {
    x: placed.tip.x + cos * x - sin * y,
    y: placed.tip.y + sin * x + cos * y,
  };
  const moved = { ...mount, ...aimedAt(tip, aim), tip, base, turn: mount.turn + turn };
  return placeStandMic(placed, moved);
}

/** The moves of a stand whose tip shifts by at most `shift` mm each way, and whose base turns by at most `turn` degrees. */
function movesOf({ placed, mount, stand, aim }: Held, shift: number, turn: number) {
  const most = shift * Math.sqrt(3);
  const { whole } = aimDistance(placed.tip, aim);
  const hold = heldMove(placed.tip, {
    shift: most,
    turn: turnOf(most, whole),
    away: whole,
    spins: false,
  });
  const move: StandMove = {
    held: hold,
    turn: toRadians(turn),
    pivot: placed.tip,
    mast: mount.mast,
  };
  return { hold, moves: new StandMoves(stand, move) };
}

const isOfStand = ({ part }: MicSolid): boolean =>
  part === 'boom' || part === 'mast' || part === 'base';

/** Even over its range, which doubles of the generator are not. */
const share = fc.integer({ min: -1000, max: 1000 }).map((thousandths) => thousandths / 1000);
const cases = fc.record({
  mic: fc.constantFrom(...held),
  shares: fc.tuple(share, share, share, share),
  shift: fc.integer({ min: 1, max: 60 }),
  turn: fc.integer({ min: 0, max: 40 }),
});
const doneOf = (
  [x, y, z, round]: readonly [number, number, number, number],
  shift: number,
  turn: number,
): Done => ({ shift: vec(x * shift, y * shift, z * shift), turn: round * turn });

const FREEDOMS = [0, 1, 2, 3] as const;
const only = (freedom: number, sign: number): readonly [number, number, number, number] => {
  const [x = 0, y = 0, z = 0, turn = 0] = FREEDOMS.map((each) => (each === freedom ? sign : 0));
  return [x, y, z, turn];
};

/** The two ends of every rigid part; the bend of a cable is none. */
const endsOf = ({ solids }: PlacedMic) =>
  solids.flatMap((solid, at) =>
    solid.part === 'bend' ? [] : [{ solid, at, ends: [solid.capsule.a, solid.capsule.b] as const }],
  );

describe('how far the parts of a mic on a stand get', () => {
  it('no end of any part gets farther than its room, however tip and base are moved', () => {
    expect(held.length).toBeGreaterThan(5);
    fc.assert(
      fc.property(cases, ({ mic, shares, shift, turn }) => {
        const { hold, moves } = movesOf(mic, shift, turn);
        const after = placedAfter(mic, doneOf(shares, shift, turn));
        for (const { solid, at, ends } of endsOf(mic.placed)) {
          const moved = after.solids[at]?.capsule;
          if (!moved) throw new Error('expected the same parts');
          const room = isOfStand(solid)
            ? moves.of(solid).room
            : Math.max(...ends.map((end) => hold(end).room));
          expect(distance(ends[0], moved.a)).toBeLessThanOrEqual(room + TIDIED);
          expect(distance(ends[1], moved.b)).toBeLessThanOrEqual(room + TIDIED);
        }
        const { stand } = after;
        if (!stand) throw new Error('expected a stand');
        const hubs = [mic.stand.footprint.hub, stand.footprint.hub] as const;
        expect(Math.hypot(hubs[1].x - hubs[0].x, hubs[1].y - hubs[0].y)).toBeLessThanOrEqual(
          moves.base + TIDIED,
        );
        const short = Math.abs(stand.beyondReach - mic.stand.beyondReach);
        expect(short).toBeLessThanOrEqual(moves.beyondReach + TIDIED);
      }),
      { numRuns: 300 },
    );
  });

  it('in no direction does an end get farther than each value by itself, as far as it may, adds up to, but for the bend', () => {
    fc.assert(
      fc.property(
        cases,
        fc.tuple(share, share, share),
        ({ mic, shares, shift, turn }, [x, y, z]) => {
          const way = unit(vec(x, y, z), vec(0, 0, 1));
          const { hold, moves } = movesOf(mic, shift, turn);
          const whole = placedAfter(mic, doneOf(shares, shift, turn));
          const single = FREEDOMS.map((freedom) =>
            ([-1, 1] as const).map((sign) =>
              placedAfter(mic, doneOf(only(freedom, sign), shift, turn)),
            ),
          );
          for (const { solid, at, ends } of endsOf(mic.placed)) {
            for (const [i, end] of (['a', 'b'] as const).entries()) {
              const from = ends[i] ?? solid.capsule.a;
              const { bend } = isOfStand(solid) ? moves.of(solid) : hold(from);
              const goes = (placed: PlacedMic): number =>
                dot(subtract(placed.solids[at]?.capsule[end] ?? from, from), way);
              const sum = single.reduce((far, both) => far + Math.max(0, ...both.map(goes)), 0);
              expect(goes(whole)).toBeLessThanOrEqual(sum + bend + 5 * TIDIED);
            }
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('nothing moves where nothing may, and more room is never less', () => {
    for (const mic of held) {
      const still = movesOf(mic, 0, 0).moves;
      const parts = mic.placed.solids.filter(isOfStand);
      expect(parts.map((solid) => still.of(solid).room)).toEqual(parts.map(() => 0));
      expect([still.base, still.beyondReach]).toEqual([0, 0]);
      const rooms = [1, 5, 25, 125].map((shift) => {
        const { moves } = movesOf(mic, shift, shift / 4);
        return [...parts.map((solid) => moves.of(solid).room), moves.base, moves.beyondReach];
      });
      for (const [i, later] of rooms.slice(1).entries()) {
        expect(later.every((room, k) => room >= (rooms[i]?.[k] ?? Number.NaN))).toBe(true);
      }
    }
  });

  it('a stand without a boom goes along with what it holds, each part by the same', () => {
    const [mic] = held;
    if (!mic) throw new Error('expected a mic on a stand');
    const move = { room: 12, bend: 3 };
    const moves = new StandMoves(mic.stand, {
      held: () => move,
      turn: undefined,
      pivot: mic.placed.tip,
      mast: null,
    });
    for (const solid of mic.placed.solids.filter(
      ({ part }) => part === 'mast' || part === 'base',
    )) {
      expect(moves.of(solid)).toEqual(move);
    }
    expect([moves.base, moves.beyondReach]).toEqual([12, 24]);
  });
});
