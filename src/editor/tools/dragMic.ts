import { aimMic, moveMic, moveMicBase, moveMicTip, setPlateDepth } from '../../layout/edit/mics.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { StandMount } from '../../layout/mics/mount.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import type { PlacedMic } from '../../rig/placed.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import { restOnCentre, restOnStep } from './detent.ts';
import { carried, type Drag, type Hold, turnedAbout } from './drag.ts';

/** Moves the front of a mic; on a stand its base stays and the boom follows. Rests on the kit's centre line. */
export function dragTip({ mic, tip }: PlacedMic, hold: Hold): Drag {
  return {
    label: `Move ${hold.nameOf(mic)}`,
    to(place) {
      const by = carried({ x: 0, y: 0 }, hold, place);
      const x = restOnCentre(tip.x, by.x, hold.near);
      return (layout) => moveMicTip(layout, mic.id, { x, y: tip.y + by.y });
    },
  };
}

/** Moves the base of a mic's stand: the tip stays and the boom follows. */
export function dragBase(mic: Mic, mount: StandMount, hold: Hold): Drag {
  return {
    label: `Move the base of ${hold.nameOf(mic)}`,
    to(place) {
      const spot = carried(mount.base, hold, place);
      return (layout) => moveMicBase(layout, mic.id, spot);
    },
  };
}

/** Moves a mic with its stand. */
export function dragWholeMic(mic: Mic, hold: Hold): Drag {
  return {
    label: `Move ${hold.nameOf(mic)} with its stand`,
    to(place) {
      const by = carried({ x: 0, y: 0 }, hold, place);
      return (layout) => moveMic(layout, mic.id, by);
    },
  };
}

/** Points a mic on the plan; its tip stays. Rests on steps of 5 degrees. */
export function dragAim({ mic, tip }: PlacedMic, azimuth: number, hold: Hold): Drag {
  return {
    label: `Aim ${hold.nameOf(mic)}`,
    to(place) {
      const by = turnedAbout(tip, hold.from.kit, place.kit);
      return (layout) => aimMic(layout, mic.id, { azimuth: restOnStep(azimuth, by) });
    },
  };
}

/** Slides a plate along its kick: only how far the finger goes along the kick counts. */
export function dragPlate(mic: Mic, depth: number, kick: Kick, hold: Hold): Drag {
  return {
    label: `Move ${hold.nameOf(mic)}`,
    to(place) {
      const by = carried({ x: 0, y: 0 }, hold, place);
      const outward = by.x * cosDeg(kick.turn) + by.y * sinDeg(kick.turn);
      return (layout) => setPlateDepth(layout, mic.id, depth - outward);
    },
  };
}
