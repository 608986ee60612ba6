import { length, subtract, unit, vec } from '../geometry/vector.ts';
import type { MicClass } from '../layout/mics/micClass.ts';
import type { MicSolid } from '../rig/placed.ts';
import type { Mm, Radians } from '../units/quantity.ts';

/**
 * How far the end of the stiff cable may get beside what turns with the mic, when the mic's body turns by at most an angle. Only the cable of a
 * right-angled plug does not turn with the body: it hangs down square to it (rule M4). The square direction turns at most as the body does, divided by the
 * sine of the body's angle to the vertical, and that sine changes at most by the turn. A unit vector never gets farther than 2.
 */
export function cableRoom(
  { connector }: Pick<MicClass, 'connector'>,
  solids: readonly MicSolid[],
  turn: Radians,
): Mm {
  const plug = solids.find(({ part }) => part === 'connector')?.capsule;
  const cable = solids.find(({ part }) => part === 'bend')?.capsule;
  if (connector !== 'rightAngle' || turn === 0 || !plug || !cable) return 0;
  const body = unit(subtract(plug.b, plug.a), vec(0, 0, 1));
  const leastSine = Math.hypot(body.x, body.y) - turn;
  const hangs = leastSine > 0 ? Math.min(2, turn / leastSine) : 2;
  return hangs * length(subtract(cable.b, cable.a));
}
