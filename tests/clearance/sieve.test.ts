import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Motion, motionFrom, motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { micPose } from '../../src/clearance/micPose.ts';
import type { Drift } from '../../src/clearance/question.ts';
import { Sieve } from '../../src/clearance/sieve.ts';
import { type Vec3, vec } from '../../src/geometry/vector.ts';
import { POSITION } from '../../src/player/arm.ts';
import { createPlaying } from '../../src/player/moves.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { MicSolid } from '../../src/rig/placed.ts';
import { seededKits } from '../support/randomKit.ts';
import { rod, startingKit } from './kits.ts';

const kits = [startingKit('five-piece-two-racks'), ...seededKits(8, 77)];

/** All ways along axes, edges and corners of a cube, as unit vectors. */
const WAYS: readonly Vec3[] = [-1, 0, 1].flatMap((x) =>
  [-1, 0, 1].flatMap((y) =>
    [-1, 0, 1].flatMap((z) => {
      const size = Math.hypot(x, y, z);
      return size === 0 ? [] : [vec(x / size, y / size, z / size)];
    }),
  ),
);

const shifted = (solids: readonly MicSolid[], way: Vec3, by: number): readonly MicSolid[] =>
  solids.map(({ part, capsule: { a, b, radius } }) => {
    const at = ({ x, y, z }: Vec3): Vec3 => vec(x + by * way.x, y + by * way.y, z + by * way.z);
    return { part, capsule: { a: at(a), b: at(b), radius } };
  });

const clearanceOf = (motion: Motion, solids: readonly MicSolid[]): number =>
  reachOf(motion, { solids }).clearance;

describe('rule C4: the sieve at the edge of a threshold', () => {
  it('never rules out all poses while one of them is clear, nor clears all while one is not', () => {
    const told = { below: 0, clear: 0, open: 0 };
    let edges = 0;
    for (const layout of kits) {
      const motion = motionOf(layout.player, layout.pieces);
      for (const { solids } of buildRig(layout).mics) {
        const own = solids.filter(({ part }) => part === 'body');
        const here = clearanceOf(motion, own);
        if (!Number.isFinite(here) || here > 400) continue;
        for (const room of [12, 40]) {
          const there = WAYS.map((way) => clearanceOf(motion, shifted(own, way, room)));
          const [least, most] = [Math.min(...there), Math.max(...there)];
          // Between what the nearest and the farthest pose have: a bound that forgets the room, on either side, tells one of these wrong.
          for (const share of [0.1, 0.5, 0.9]) {
            const threshold = least + share * (most - least);
            const sieve = new Sieve(motion);
            // A drift that is no less than the room says nothing new, but has pieces looked at more closely.
            const drift: Drift = { along: () => room, bounded: () => undefined };
            const rooms = own.map(() => room);
            const question = { threshold, rooms, room, tolerance: 0.1, drift };
            const answer = sieve.ask(micPose(own), question, sieve.all());
            if (most > threshold + 0.3) expect(answer).not.toBe('below');
            if (least < threshold - 0.3) expect(answer).not.toBe('clear');
            if (most > threshold + 0.3 && here < threshold) edges += 1;
            told[answer] += 1;
          }
          for (const threshold of [here + 2.2 * room + 1, here - 2.2 * room - 1]) {
            const sieve = new Sieve(motion);
            const question = { threshold, rooms: own.map(() => room), room, tolerance: 0.1 };
            told[sieve.ask(micPose(own), question, sieve.all())] += 1;
          }
        }
      }
    }
    expect(edges).toBeGreaterThan(30);
    for (const count of Object.values(told)) expect(count).toBeGreaterThan(10);
  }, 240_000);

  it('answers the same whatever was asked before, on this kit or on one with a piece moved', () => {
    const layout = startingKit('large-kit');
    const { player } = layout;
    const playing = createPlaying();
    const frames = [0, 15, -20].map((by) =>
      layout.pieces.map((piece) =>
        piece.kind === 'rackTom' ? { ...piece, x: piece.x + by } : piece,
      ),
    );
    const motions = frames.map((pieces) => motionFrom(playing(player, pieces), player, pieces));
    const solids = buildRig(layout).mics.map((placed) => placed.solids);
    const answers = (of: readonly Motion[]) =>
      of.flatMap((motion) =>
        solids.flatMap((own) =>
          [60, 20, 5].map((room) => {
            const sieve = new Sieve(motion);
            const question = { threshold: 30, rooms: own.map(() => room), room, tolerance: 0.1 };
            return [sieve.ask(micPose(own), question, sieve.all()), sieve.rest().length];
          }),
        ),
      );
    const shared = answers([...motions, ...motions.toReversed()]);
    const fresh = frames.map((pieces) => motionOf(player, pieces));
    expect(shared).toEqual(answers([...fresh, ...fresh.toReversed()]));
  }, 240_000);
});

describe('rule C4: the sieve of one pose', () => {
  it('tells a rod beside any part of the arm as clear exactly where the engine does', () => {
    const motions = kits.map(({ player, pieces }) => motionOf(player, pieces));
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const scene = fc.record({
      kit: fc.nat({ max: motions.length - 1 }),
      move: share,
      time: share,
      part: fc.constantFrom(0, 1, 2),
      along: share,
      way: fc.constantFrom(...WAYS),
      lies: fc.constantFrom(...WAYS),
      off: fc.integer({ min: 5, max: 120 }),
    });
    const position = new Float64Array(POSITION);
    let near = 0;
    fc.assert(
      fc.property(scene, ({ kit, move, time, part, along, way, lies, off }) => {
        const motion = motions[kit] as Motion;
        const { moves, arm } = motion.swept;
        const moving = moves[Math.floor(move * (moves.length - 1))]?.move;
        const { at, radius } = arm.parts[part] as (typeof arm.parts)[number];
        moving?.write(time, position, 0);
        const onAxis = (k: number): number => {
          const [a = 0, b = 0] = [position[at + k], position[at + 3 + k]];
          return a + along * (b - a);
        };
        const far = radius + off;
        const side = moving?.side === 'left' ? -1 : 1;
        const p = vec(
          side * onAxis(0) + far * way.x,
          onAxis(1) + far * way.y,
          onAxis(2) + far * way.z,
        );
        const solids = rod(p, vec(p.x + 60 * lies.x, p.y + 60 * lies.y, p.z + 60 * lies.z), 8);
        const clearance = clearanceOf(motion, solids);
        if (!Number.isFinite(clearance)) return;
        near += clearance > 0 ? 1 : 0;
        for (const by of [-3, -0.4, 0.4, 3]) {
          const sieve = new Sieve(motion);
          const question = { threshold: clearance + by, rooms: [0], room: 0, tolerance: 0.1 };
          const answer = sieve.ask(micPose(solids), question, sieve.all());
          expect(answer).toBe(by > 0 ? 'below' : 'clear');
        }
      }),
      { numRuns: 300 },
    );
    expect(near).toBeGreaterThan(20);
  });
});
