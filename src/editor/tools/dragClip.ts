import { changeClip } from '../../layout/edit/mics.ts';
import { tidy } from '../../layout/edit/tidy.ts';
import { clipPlaceAt } from '../../layout/mics/clipPlace.ts';
import type { ClipMount } from '../../layout/mics/mount.ts';
import type { Drum } from '../../layout/pieces/drum.ts';
import type { PlacedMic } from '../../rig/placed.ts';
import { toDegrees } from '../../units/angle.ts';
import { clearEnds } from '../rim/arcs.ts';
import { restOnPlaces, restOnStart } from './detent.ts';
import { carried, type Drag, type Hold } from './drag.ts';

interface Clip {
  readonly placed: PlacedMic;
  readonly mount: ClipMount;
  readonly drum: Drum;
}

/** How much more than elsewhere a finger may stray from the rim before the mic leaves it. */
const STRAY = 2;
/** Reaches nearer than this, mm, have the same ring to what its ends are exact to. */
const SAME_REACH = 0.5;
/** A small drum's rim is short on the screen: a detent never takes more than this. */
const MOST_DEGREES = 5;

/** Moves a clip mic round its rim, and in and out. Rests on its reach, and at the ends of the arcs where it is clear. */
export function dragClip({ placed, mount, drum }: Clip, hold: Hold): Drag {
  const { mic, tip } = placed;
  return {
    label: `Move ${hold.nameOf(mic)}`,
    to(place) {
      const to = clipPlaceAt(drum, carried(tip, hold, place), mount.height);
      const reach = restOnStart(mount.reach, to.reach, STRAY * hold.near);
      const out = Math.max(1, drum.diameter / 2 - reach);
      const ring = hold.ring();
      // A ring is computed beside the page: one of another reach says nothing of this one.
      const isOfThis = ring?.mic === mic.id && Math.abs(ring.reach - reach) < SAME_REACH;
      const ends = isOfThis ? clearEnds(ring.arcs) : [];
      const near = Math.min(MOST_DEGREES, toDegrees(hold.near / out));
      const angle = restOnPlaces(to.angle, ends, near);
      return (layout) => changeClip(layout, mic.id, { angle, reach: tidy(reach) });
    },
  };
}
