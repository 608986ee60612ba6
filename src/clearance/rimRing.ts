import { length, perpendicular, subtract, vec } from '../geometry/vector.ts';
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
import { type Bounds, TOLERANCE } from './moveSearch.ts';
import type { Verdict } from './nearest.ts';
import { narrowed, neighbourhood, regionOf } from './neighbourhood.ts';

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
  const look = (from: Degrees, to: Degrees, entries: Int32Array): void => {
    const middle = (from + to) / 2;
    const placed = atAngle(clip, middle);
    const room = ((to - from) / 2) * perDegree;
    const region = regionOf(placed.solids, vec(room, room, room));
    const among = narrowed(motion.swept, entries, region, clip.margin + 2 * room);
    const sides = (threshold: Mm): Side =>
      sideOf(threshold, room, (bounds) => reachOf(motion, placed, { ...bounds, among }).clearance);
    const verdict = wholeVerdict(sides, clip.margin);
    if (verdict) add({ verdict, from, to });
    else if (to - from <= FINE) {
      const bounds = { limit: clip.margin, enough: 0, tolerance: TOLERANCE, among };
      const { clearance } = reachOf(motion, placed, bounds);
      add({ verdict: verdictOf(clearance, clip.margin), from, to });
    } else {
      look(from, middle, among);
      look(middle, to, among);
    }
  };
  const entries = roundTheRim(motion, clip, perDegree);
  for (let from = 0; from < 360; from += COARSE) look(from, from + COARSE, entries);
  return arcs;
}

/** Whether a whole stretch is above or below a threshold; undefined where it may be both. */
type Side = 'above' | 'below' | undefined;

/** Asks only which side of the threshold the middle of a stretch is on by more than `room` mm, which costs less than its clearance. */
function sideOf(threshold: Mm, room: Mm, clearance: (bounds: Bounds) => Mm): Side {
  const limit = threshold + room;
  const tolerance = Math.max(TOLERANCE, room / 8);
  const found = clearance({ limit: limit + tolerance, enough: threshold - room, tolerance });
  if (found >= limit) return 'above';
  return found <= threshold - room - tolerance ? 'below' : undefined;
}

function wholeVerdict(side: (threshold: Mm) => Side, margin: Mm): Verdict | undefined {
  const overNothing = side(0);
  if (overNothing === 'below') return 'struck';
  if (overNothing === undefined) return undefined;
  const overMargin = side(margin);
  return overMargin && (overMargin === 'above' ? 'clear' : 'tight');
}

/** All that sweeps where the mic can be: it is looked for round the whole rim once. */
function roundTheRim(motion: Motion, clip: Clip, perDegree: Mm): Int32Array {
  const solids = [0, 45, 90, 135, 180, 225, 270, 315].flatMap(
    (angle) => atAngle(clip, angle).solids,
  );
  const room = 22.5 * perDegree;
  return neighbourhood(
    motion.swept,
    regionOf(solids, vec(room, room, room)),
    clip.margin + COARSE * perDegree,
  );
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
