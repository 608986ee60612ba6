import { expect, it } from 'vitest';
import { SPOT } from '../../src/clearance/floorField.ts';
import { stickFloor } from '../../src/clearance/stickFloor.ts';
import { SweptMoves } from '../../src/clearance/sweptMoves.ts';
import { vec } from '../../src/geometry/vector.ts';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { Arm, FOREARM_RADIUS, GRIP, POSITION } from '../../src/player/arm.ts';
import { HANG_X, HANG_Z } from '../../src/player/armLinks.ts';
import { ElbowBow } from '../../src/player/elbowBow.ts';
import { type Move, writeStick } from '../../src/player/move.ts';

const arm = new Arm(fivePieceOneRack('kit').player);
/** Waves of the move, each as long as an interval of it at most, and how high they are, mm. */
const WAVES = 8;
const HIGH = 10;
const turns = 2 * Math.PI * WAVES;
const speed = Math.hypot(200, HIGH * turns);
const bend = HIGH * turns * turns;

/** A hand that is up at the ends of all intervals and dips between them. */
const dipping: Move = {
  side: 'right',
  on: 'a',
  from: 'b',
  speed: { grip: speed, butt: speed, tip: speed },
  bend: { grip: bend, butt: bend, tip: bend },
  write(t, out, at) {
    out.set([250 + 200 * t, 350, 800 + HIGH * Math.cos(turns * t)], at + GRIP);
    writeStick(out, at, vec(0, 1, 0), arm);
  },
};

it.each(arm.parts.filter(({ name }) => name !== 'forearm'))(
  'what a $name does between two known moments is in the field',
  (part) => {
    const swept = new SweptMoves({ arm, moves: [dipping] });
    const floor = stickFloor(swept, { left: -300, bottom: -600, right: 900, top: 900 });
    const row = new Float64Array(POSITION);
    for (let wave = 0; wave < WAVES; wave++) {
      dipping.write((wave + 0.5) / WAVES, row, 0);
      // Toward the tip of the stick, where nothing else is over the spot.
      const share = 0.7;
      const [x = 0, y = 0, z = 0] = [0, 1, 2].map(
        (k) => (1 - share) * (row[part.at + k] ?? 0) + share * (row[part.at + 3 + k] ?? 0),
      );
      const column = Math.round((x - floor.left) / SPOT);
      const line = Math.round((y - floor.bottom) / SPOT);
      const height = floor.heights[line * floor.columns + column];
      expect(height).toBeLessThanOrEqual(z - part.radius);
      expect(height).toBeGreaterThan(z - part.radius - 60);
    }
  },
);

/** How far a hand is from its shoulder along the line in which an elbow hangs, how far beside that line, and the way across it, mm. */
const DOWN = 420;
const BESIDE = 4;
const ACROSS = 200;
const looseSpeed = 1.3 * ACROSS;
const looseBend = 2 * ACROSS;

/** A hand that passes the line along which its elbow hangs, where the elbow swings down and up again, with bounds as loose as they may be. */
const passing = (begin: number): Move => ({
  ...dipping,
  speed: { grip: looseSpeed, butt: looseSpeed, tip: looseSpeed },
  bend: { grip: looseBend, butt: looseBend, tip: looseBend },
  write(t, out, at) {
    const x = arm.shoulderX + HANG_X * DOWN - HANG_Z * BESIDE;
    const z = arm.shoulderZ + HANG_Z * DOWN + HANG_X * BESIDE;
    out.set([x, begin + ACROSS * t, z], at + GRIP);
    writeStick(out, at, vec(0, 1, 0), arm);
  },
});

it('what an elbow does between two known moments is in the field where its bow has no bound', () => {
  // However the known moments lie about the middle, one of these has it far from both.
  for (const begin of [-100, -95, -90, -85]) {
    const move = passing(begin);
    const row = new Float64Array(POSITION);
    const at = (y: number) => {
      move.write((y - begin) / ACROSS, row, 0);
      return row.slice();
    };
    const [before, lowest, after] = [at(-25), at(0), at(25)];
    expect(lowest[2]).toBeLessThan(Math.min(before[2] ?? 0, after[2] ?? 0) - 60);
    const way = new Float64Array([...before, ...after]);
    const share = 50 / ACROSS;
    const loose = { room: looseSpeed * share, bend: looseBend * share * share };
    expect(new ElbowBow(arm).between(way, GRIP, POSITION + GRIP, loose)).toBe(
      Number.POSITIVE_INFINITY,
    );
    const swept = new SweptMoves({ arm, moves: [move] });
    const floor = stickFloor(swept, { left: -600, bottom: -900, right: 1200, top: 1200 });
    const [x = 0, y = 0, z = 0] = lowest;
    const column = Math.round((x - floor.left) / SPOT);
    const line = Math.round((y - floor.bottom) / SPOT);
    const height = floor.heights[line * floor.columns + column];
    expect(height).toBeLessThanOrEqual(z - FOREARM_RADIUS);
    expect(height).toBeGreaterThan(z - FOREARM_RADIUS - 60);
  }
});
