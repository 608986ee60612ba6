import { expect, it } from 'vitest';
import { SPOT } from '../../src/clearance/floorField.ts';
import { stickFloor } from '../../src/clearance/stickFloor.ts';
import { SweptMoves } from '../../src/clearance/sweptMoves.ts';
import { vec } from '../../src/geometry/vector.ts';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { Arm, GRIP, POSITION } from '../../src/player/arm.ts';
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
