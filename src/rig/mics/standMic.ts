import { listed } from '../../geometry/listed.ts';
import { along, scale, subtract, unit, type Vec3, vec } from '../../geometry/vector.ts';
import { type StandSpec, standSpec } from '../../layout/catalogue/standClasses.ts';
import type { MicClass } from '../../layout/mics/micClass.ts';
import type { StandMount } from '../../layout/mics/mount.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Mm } from '../../units/quantity.ts';
import { baseCapsules, discFootprint, legsFootprint } from '../feet.ts';
import type { DescentPart, Footprint, MicSolid, PlacedMic, PlacedStand } from '../placed.ts';
import { standReach } from '../standReach.ts';
import { type Microphone, type Pose, placeBody } from './body.ts';

/** How far a boom sticks out behind its clutch, its counterweight included. Common practice, no source. */
export const BOOM_TAIL: Mm = 100;

/**
 * M11 The axis points to `azimuth`, `pitch` up. A side-address body is that of a mic that stands upright, connector down,
 *     facing its azimuth, and is then leaned by its pitch: aimed straight down it lies level, connector behind.
 */
export function standPose({ tip, azimuth, pitch }: StandMount): Pose {
  const x = cosDeg(azimuth);
  const y = sinDeg(azimuth);
  const cos = cosDeg(pitch);
  const sin = sinDeg(pitch);
  return {
    tip: vec(tip.x, tip.y, tip.z),
    axis: vec(cos * x, cos * y, sin),
    across: vec(sin * x, sin * y, -cos),
    aside: vec(-x, -y, 0),
  };
}

/** Where a stand holds the mic: what its boom must reach. */
export const holdPoint = (mount: StandMount, micClass: MicClass): Vec3 =>
  placeBody(micClass, standPose(mount)).hold;

/** M12 The cable follows the boom to the clutch and the mast to the deck, which it reaches at the base's middle. */
export function placeStandMic({ mic, micClass }: Microphone, mount: StandMount): PlacedMic {
  const spec = standSpec(mount.stand);
  const pose = standPose(mount);
  const body = placeBody(micClass, pose);
  const reach = standReach(spec, mount.base, body.hold, mount.mast);
  const footprint = standFootprint(spec, mount);
  const stand = { standClass: mount.stand, hold: body.hold, footprint, ...reach };
  return {
    mic,
    micClass,
    tip: pose.tip,
    axis: pose.axis,
    solids: [...body.solids, ...boomSolids(spec, stand), ...mastAndBase(spec, stand)],
    stand,
    descent: standDescent(stand),
    deckPoint: footprint.hub,
  };
}

/** M13 A tripod's legs reach from the mast to its feet; a round base is a disc. */
export function standFootprint(spec: StandSpec, { base, turn }: StandMount): Footprint {
  const hub = { x: base.x, y: base.y };
  if (spec.base === 'round') return discFootprint(hub, spec.footRadius, spec.legHeight);
  return legsFootprint({ ...spec, hub, turn, legs: 3, spread: spec.footRadius });
}

/** M14 A boom goes on behind its clutch by {@link BOOM_TAIL}. */
function boomSolids(spec: StandSpec, { clutch, hold, boomLength }: PlacedStand): MicSolid[] {
  if (boomLength === 0) return [];
  const way = unit(subtract(hold, clutch), vec(0, 0, 1));
  const tail = along(clutch, scale(way, -1), BOOM_TAIL);
  return [
    { part: 'boom', capsule: { a: clutch, b: hold, radius: spec.boomRadius } },
    { part: 'boom', capsule: { a: tail, b: clutch, radius: spec.boomRadius } },
  ];
}

function mastAndBase(spec: StandSpec, { clutch, footprint }: PlacedStand): MicSolid[] {
  const foot = vec(clutch.x, clutch.y, spec.mastRadius);
  return [
    { part: 'mast', capsule: { a: foot, b: clutch, radius: spec.mastRadius } },
    ...listed(baseCapsules(footprint), (capsule): MicSolid => ({ part: 'base', capsule })),
  ];
}

function standDescent({ clutch, boomLength }: PlacedStand): DescentPart[] {
  const mast: DescentPart = { along: 'mast', length: clutch.z };
  return boomLength > 0 ? [{ along: 'boom', length: boomLength }, mast] : [mast];
}
