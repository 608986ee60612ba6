import { length, perpendicular, subtract } from '../geometry/vector.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { ClipMount } from '../layout/mics/mount.ts';
import type { Drum } from '../layout/pieces/drum.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { type MicSurroundings, placeMic } from '../rig/placeMic.ts';
import { surfaceOf } from '../rig/surface.ts';
import { cosDeg, toRadians } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import { verdictOf } from './clearances.ts';
import { type Motion, reachOf } from './micClearance.ts';
import type { Verdict } from './nearest.ts';

/** A stretch of a drum's rim, anticlockwise from `from` to `to` (degrees, `to` above `from`), and what a clip there would be. */
export interface RimArc {
  readonly verdict: Verdict;
  readonly from: Degrees;
  readonly to: Degrees;
}

/** A clip mic whose angle round the rim is to be chosen. */
export interface Clip {
  readonly mic: Mic;
  readonly mount: ClipMount;
  readonly drum: Drum;
  readonly surroundings: MicSurroundings;
  /** Clearance below which it is tight, mm. */
  readonly margin: Mm;
}

/** First width of the stretches looked at, and the width below which one is not halved further: edges are exact to it. */
const COARSE: Degrees = 15;
const FINE: Degrees = 0.5;

/** The clip mic at another place round its rim. */
export function atAngle({ mic, mount, surroundings }: Clip, angle: Degrees): PlacedMic {
  return placeMic({ ...mic, mount: { ...mount, angle } }, surroundings);
}

/**
 * Rule R1: the verdict round a drum's rim for a clip with its reach, height and pitch kept; whole turn, starting at 0 degrees. Going round,
 * no point of the mic moves faster than the farthest of them from the drum's axis: a stretch whose middle is farther than that
 * from every threshold is decided whole, the others are halved down to half a degree.
 */
export function rimRing(motion: Motion, clip: Clip): readonly RimArc[] {
  const perDegree = mmPerDegree(clip);
  const arcs: RimArc[] = [];
  const add = ({ verdict, from, to }: RimArc): void => {
    const last = arcs.at(-1);
    if (last?.verdict === verdict) arcs[arcs.length - 1] = { ...last, to };
    else arcs.push({ verdict, from, to });
  };
  const look = (from: Degrees, to: Degrees): void => {
    const middle = (from + to) / 2;
    const room = ((to - from) / 2) * perDegree;
    const bounds = { limit: clip.margin + room, enough: -room };
    const { clearance } = reachOf(motion, atAngle(clip, middle), bounds);
    const [least, most] = [
      verdictOf(clearance - room, clip.margin),
      verdictOf(clearance + room, clip.margin),
    ];
    if (least === most || to - from <= FINE) {
      add({ verdict: verdictOf(clearance, clip.margin), from, to });
      return;
    }
    look(from, middle);
    look(middle, to);
  };
  for (let from = 0; from < 360; from += COARSE) look(from, from + COARSE);
  return arcs;
}

/**
 * How far any point of the mic moves per degree, mm. Angles are those of the plan; on a tilted head the rim turns by up to
 * 1/cos(tilt) as much.
 */
function mmPerDegree(clip: Clip): Mm {
  const { centre, normal } = surfaceOf(clip.drum);
  const { solids } = atAngle(clip, clip.mount.angle);
  const farthest = solids.flatMap(({ capsule: { a, b } }) =>
    [a, b].map((point) => length(perpendicular(subtract(point, centre), normal))),
  );
  return (toRadians(1) * Math.max(...farthest)) / Math.max(0.05, cosDeg(clip.drum.tilt));
}
