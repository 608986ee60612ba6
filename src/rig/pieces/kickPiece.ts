import type { Cylinder } from '../../geometry/cylinder.ts';
import { listed } from '../../geometry/listed.ts';
import { along, type Vec2, vec } from '../../geometry/vector.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Mm } from '../../units/quantity.ts';
import { discFootprint } from '../feet.ts';
import type { PlacedPiece } from '../placed.ts';
import { type KickFrame, kickFrame } from './kickFrame.ts';
import { hoopsOf } from './shell.ts';

/** Common practice, no source. */
const SPUR_RADIUS: Mm = 8;
const SPUR_FOOT_RADIUS: Mm = 15;
const SPUR_FOOT_HEIGHT: Mm = 20;
/** From the shell's middle toward the front head, as a share of the depth. */
const SPURS_FORWARD = 0.25;

/**
 * P11 A kick is a lying cylinder with a hoop at either end and a spur on either side: from the shell's flank, a quarter of
 *     the depth in front of its middle, to a foot `spurs` outside the shell.
 */
export function placeKick(piece: Kick): PlacedPiece {
  const frame = kickFrame(piece);
  const shell: Cylinder = {
    centre: frame.middle,
    axis: frame.front,
    radius: piece.diameter / 2,
    halfHeight: piece.depth / 2,
  };
  const feet = spurFeet(piece, frame);
  return {
    piece,
    shells: [shell],
    hoops: hoopsOf(shell, piece.rim),
    hardware: listed(feet, (foot, side) => ({
      a: along(spurRoot(piece, frame), frame.right, (side === 0 ? 1 : -1) * shell.radius),
      b: vec(foot.x, foot.y, SPUR_RADIUS),
      radius: SPUR_RADIUS,
    })),
    footprints: listed(feet, (foot) => discFootprint(foot, SPUR_FOOT_RADIUS, SPUR_FOOT_HEIGHT)),
    outlines: [kickOutline(piece)],
  };
}

const spurRoot = (piece: Kick, { middle, front }: KickFrame) =>
  along(middle, front, SPURS_FORWARD * piece.depth);

/** Feet of the spurs on the deck: to the right as seen from the front, then to the left. */
export function spurFeet(piece: Kick, frame: KickFrame): readonly [Vec2, Vec2] {
  const root = spurRoot(piece, frame);
  const out = piece.diameter / 2 + piece.spurs;
  const foot = (side: 1 | -1): Vec2 => {
    const { x, y } = along(root, frame.right, side * out);
    return { x, y };
  };
  return [foot(1), foot(-1)];
}

/** P12 A kick's outline on the plan: the rectangle round its shell and hoops. Nothing is laid under a kick. */
function kickOutline(kick: Kick): Vec2[] {
  const halfWidth = kick.diameter / 2 + kick.rim.width;
  const halfLength =
    (kick.depth / 2 + kick.rim.height) * cosDeg(kick.rise) +
    halfWidth * Math.abs(sinDeg(kick.rise));
  const cosTurn = cosDeg(kick.turn);
  const sinTurn = sinDeg(kick.turn);
  const corner = (forward: Mm, left: Mm): Vec2 => ({
    x: kick.x + forward * cosTurn - left * sinTurn,
    y: kick.y + forward * sinTurn + left * cosTurn,
  });
  return [
    corner(-halfLength, -halfWidth),
    corner(halfLength, -halfWidth),
    corner(halfLength, halfWidth),
    corner(-halfLength, halfWidth),
  ];
}
