import { toDegrees } from '../../units/angle.ts';
import type { Degrees, Mm } from '../../units/quantity.ts';
import { findMicClass, type MountChoice } from '../catalogue/micClasses.ts';
import { type Aim, standMountsAt } from '../catalogue/offered/standMount.ts';
import type { Id } from '../fields.ts';
import type { Layout } from '../layout.ts';
import { clipPlaceAt } from '../mics/clipPlace.ts';
import type { Mic } from '../mics/mic.ts';
import type { Mount, StandClass } from '../mics/mount.ts';
import type { Drum } from '../pieces/drum.ts';
import { isDrum } from '../pieces/piece.ts';
import { changeMic } from './change.ts';
import { tidy, tidyAzimuth, tidySpot } from './tidy.ts';

interface Point {
  readonly x: Mm;
  readonly y: Mm;
  readonly z: Mm;
}

/** Where the front of a mic is now and the unit direction in which it listens, as placed in space; kit frame. */
export interface MicPose {
  readonly tip: Point;
  readonly axis: Point;
}

/** Where a plate is laid in a kick that it was not in before. */
const PLATE_DEPTH: Mm = 220;

/**
 * Puts a mic on another mount with its front as near as can be to where it is now: a stand keeps tip and aim and gets a base
 * where there is room; a clip sits on the drum it hears (else the nearest drum) at the nearest place of its rim; a plate lies in
 * the kick it hears (else any), or on the deck below. Without effect where there is no such drum or kick, or no stand reaches.
 */
export const remount = (layout: Layout, id: Id, choice: MountChoice, pose: MicPose): Layout =>
  changeMic(layout, id, (mic) => ({ ...mic, mount: mountFor(layout, mic, choice, pose) }));

function mountFor(layout: Layout, mic: Mic, choice: MountChoice, pose: MicPose): Mount {
  const { mount } = mic;
  switch (choice) {
    case 'clip':
      return mount.kind === 'clip' ? mount : (clipNear(layout, mic, pose) ?? mount);
    case 'plateInKick': {
      const kicks = layout.pieces.filter((piece) => piece.kind === 'kick');
      const kick = kicks.find((piece) => mic.hears.includes(piece.id)) ?? kicks[0];
      if (!kick || mount.kind === 'plateInKick') return mount;
      return { kind: choice, kick: kick.id, depth: PLATE_DEPTH };
    }
    case 'plateOnDeck': {
      if (mount.kind === 'plateOnDeck') return mount;
      return { kind: choice, ...tidySpot(pose.tip.x, pose.tip.y), turn: aimOf(pose).azimuth };
    }
    default:
      if (mount.kind === 'stand') return { ...mount, stand: choice };
      return standNear(layout, mic, choice, pose) ?? mount;
  }
}

function clipNear(layout: Layout, mic: Mic, pose: MicPose): Mount | undefined {
  const drums = layout.pieces.filter(isDrum);
  const heard = drums.find((piece) => mic.hears.includes(piece.id));
  const drum = heard ?? drums.toSorted((a, b) => apart(a, pose.tip) - apart(b, pose.tip))[0];
  if (!drum) return undefined;
  const { angle, reach, height } = clipPlaceAt(drum, pose.tip, 0);
  return {
    kind: 'clip',
    drum: drum.id,
    material: 'rubber',
    angle: tidyAzimuth(angle),
    reach: tidy(reach),
    height: tidy(height),
    pitch: -aimOf(pose).pitch,
  };
}

function standNear(layout: Layout, mic: Mic, stand: StandClass, pose: MicPose): Mount | undefined {
  const micClass = findMicClass(layout, mic.micClass);
  if (!micClass) return undefined;
  const aim = aimOf(pose);
  return standMountsAt({ layout, micClass, stand }, aim, aim.azimuth + 180)[0];
}

function aimOf({ tip, axis }: MicPose): Aim & { readonly azimuth: Degrees } {
  const level = Math.hypot(axis.x, axis.y);
  const azimuth = level < 1e-9 ? 270 : toDegrees(Math.atan2(axis.y, axis.x));
  return {
    tip,
    azimuth: tidyAzimuth(azimuth),
    pitch: tidy(toDegrees(Math.atan2(axis.z, level))),
  };
}

const apart = (drum: Drum, { x, y, z }: Point): Mm =>
  Math.hypot(drum.x - x, drum.y - y, drum.z - z);
