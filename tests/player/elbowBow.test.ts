import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  along,
  distance,
  dot,
  length,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { Arm, GRIP, POSITION } from '../../src/player/arm.ts';
import { ElbowBow } from '../../src/player/elbowBow.ts';
import { playingOf } from '../../src/player/moves.ts';
import { anyPlayer, armOf, average, elbowFor, shoulderOf } from './arms.ts';

/** A way of the grip from a point, straight along `way` and bent aside by `bent` half way. */
interface BentWay {
  readonly from: Vec3;
  readonly way: Vec3;
  readonly bent: Vec3;
}
const gripAt = ({ from, way, bent }: BentWay, t: number): Vec3 =>
  add(along(from, way, t), scale(bent, 4 * t * (1 - t)));
const boundsOf = ({ way, bent }: BentWay) => ({
  room: length(way) + 4 * length(bent),
  bend: 8 * length(bent),
});
const ends = (way: BentWay): Float64Array => {
  const rows = new Float64Array(2 * POSITION);
  for (const t of [0, 1]) {
    const { x, y, z } = gripAt(way, t);
    rows.set([x, y, z], t * POSITION + GRIP);
  }
  return rows;
};
const bowOf = (arm: Arm, way: BentWay): number =>
  arm.elbowBow(ends(way), 0, POSITION, boundsOf(way));
const derived = (arm: Arm, way: BentWay): number =>
  new ElbowBow(arm).between(ends(way), GRIP, POSITION + GRIP, boundsOf(way));

function fromSegment(a: Vec3, b: Vec3, p: Vec3): number {
  const ab = subtract(b, a);
  const size = dot(ab, ab);
  const t = size > 0 ? Math.max(0, Math.min(1, dot(subtract(p, a), ab) / size)) : 0;
  return distance(p, along(a, ab, t));
}

/** The farthest the elbow gets from the straight line between its ends. */
function farthest(arm: Arm, way: BentWay): number {
  const elbow = (t: number): Vec3 => elbowFor(arm, gripAt(way, t));
  const [first, last] = [elbow(0), elbow(1)];
  const between = Array.from({ length: 40 }, (_, k) => elbow((k + 0.5) / 40));
  return Math.max(...between.map((p) => fromSegment(first, last, p)));
}

const one = fc.double({ min: -1, max: 1, noNaN: true });
const direction = fc.tuple(one, one, one).map(([x, y, z]) => unit(vec(x, y, z), vec(0, 1, 0)));
const sizes = fc.double({ min: -3, max: 2.3, noNaN: true }).map((power) => 10 ** power);
const share = fc.double({ min: 0, max: 0.5, noNaN: true });
const bentWay = (arm: Arm, far: fc.Arbitrary<number>): fc.Arbitrary<BentWay> =>
  fc
    .tuple(direction, far, direction, sizes, direction, share)
    .map(([out, away, ahead, size, aside, part]) => ({
      from: along(shoulderOf(arm), out, away),
      way: scale(ahead, size),
      bent: scale(aside, part * size),
    }));

describe('the bow of the elbow', () => {
  it('is never less than how far the elbow leaves the straight line, wherever the grip goes', () => {
    fc.assert(
      fc.property(
        anyPlayer
          .map((player) => new Arm(player))
          .chain((arm) =>
            fc.tuple(fc.constant(arm), bentWay(arm, fc.double({ min: 0, max: 1100, noNaN: true }))),
          ),
        ([arm, way]) => {
          const most = farthest(arm, way) - 1e-6;
          expect(bowOf(arm, way)).toBeGreaterThanOrEqual(most);
          expect(derived(arm, way)).toBeGreaterThanOrEqual(most);
        },
      ),
      { numRuns: 4000 },
    );
  });

  it('is the same for the way there and back', () => {
    fc.assert(
      fc.property(
        anyPlayer
          .map((player) => new Arm(player))
          .chain((arm) =>
            fc.tuple(
              fc.constant(arm),
              bentWay(arm, fc.double({ min: 200, max: 1000, noNaN: true })),
            ),
          ),
        ([arm, way]) => {
          const back = { from: add(way.from, way.way), way: scale(way.way, -1), bent: way.bent };
          const [there, again] = [derived(arm, way), derived(arm, back)];
          if (Number.isFinite(there)) expect(Math.abs(again / there - 1)).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('holds where the trunk begins and ceases to lean, and with a trunk that does not', () => {
    fc.assert(
      fc.property(
        fc
          .tuple(anyPlayer, fc.constantFrom(0, 3, 40, 200), fc.boolean())
          .chain(([player, lean, ceases]) => {
            const arm = new Arm({ ...player, lean });
            const edge = arm.easy + (ceases ? lean : 0);
            const far = fc.double({ min: edge - 30, max: edge + 30, noNaN: true });
            return fc.tuple(fc.constant(arm), bentWay(arm, far));
          }),
        ([arm, way]) => {
          expect(derived(arm, way)).toBeGreaterThanOrEqual(farthest(arm, way) - 1e-6);
        },
      ),
      { numRuns: 4000 },
    );
  });

  it('holds beside the line that the elbow hangs along and where unequal links fold', () => {
    const hang = unit(vec(0.5, 0, -0.87), vec(0, 0, 1));
    const arms = [armOf(280, 380), armOf(380, 280)];
    fc.assert(
      fc.property(
        fc.constantFrom(...arms).chain((arm) => fc.tuple(fc.constant(arm), bentWay(arm, sizes))),
        fc.boolean(),
        ([arm, way], hanging) => {
          const from = hanging
            ? along(way.from, hang, 400)
            : along(way.from, unit(way.bent, hang), 100);
          const moved = { ...way, from };
          expect(derived(arm, moved)).toBeGreaterThanOrEqual(farthest(arm, moved) - 1e-6);
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('goes with the square of the way, and is nothing for a grip that stays', () => {
    const arm = new Arm(average);
    const from = along(shoulderOf(arm), unit(vec(-0.1, 0.8, -0.6), vec(0, 1, 0)), 450);
    const bow = (size: number): number =>
      bowOf(arm, { from, way: vec(size, 0, 0), bent: vec(0, 0, 0.1 * size * size * 1e-2) });
    expect(bow(0)).toBe(0);
    expect(bow(5) / bow(10)).toBeGreaterThan(0.22);
    expect(bow(5) / bow(10)).toBeLessThan(0.28);
  });

  it('is a few mm in an eighth of most travels of the starting kits: a looser one would slow the search', () => {
    for (const kit of STARTING_KITS) {
      const { player, pieces } = kit.make('kit');
      const { arm, moves } = playingOf(player, pieces);
      const rows = new Float64Array(2 * POSITION);
      const bows = moves.flatMap((move) =>
        Array.from({ length: 8 }, (_, k) => {
          move.write(k / 8, rows, 0);
          move.write((k + 1) / 8, rows, POSITION);
          const way = { room: move.speed.grip / 8, bend: move.bend.grip / 64 };
          return arm.elbowBow(rows, 0, POSITION, way);
        }),
      );
      const median = bows.toSorted((a, b) => a - b)[Math.floor(bows.length / 2)];
      if (median !== undefined) expect(median, kit.name).toBeLessThan(15);
    }
  });
});
