import { length, perpendicular, subtract, vec } from '../geometry/vector.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { ClipMount } from '../layout/mics/mount.ts';
import type { Drum } from '../layout/pieces/drum.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { type MicSurroundings, placeMic } from '../rig/placeMic.ts';
import { surfaceOf } from '../rig/surface.ts';
import { cosDeg, toRadians } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import { type Motion, reachOf } from './micClearance.ts';
import { micShape } from './micShape.ts';
import { type Bounds, type MicShapes, MoveSearch, TOLERANCE } from './moveSearch.ts';
import type { Verdict } from './nearest.ts';
import { entryMeets, neighbourhood, type Region, regionOf } from './neighbourhood.ts';

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

/** Widths of the stretches looked at: from a coarse one down by halves to the finest, to which edges of arcs are exact. */
const COARSE: Degrees = 15;
const HALVINGS = 5;

/** The clip mic at another place round its rim. */
export function atAngle({ mic, mount, surroundings }: Clip, angle: Degrees): PlacedMic {
  return placeMic({ ...mic, mount: { ...mount, angle } }, surroundings);
}

/**
 * Rule R1: the verdict round a drum's rim for a clip with its reach, height and pitch kept; whole turn, starting at 0 degrees. What sweeps paints
 * the stretches of the rim, one part in one interval of a move after the other. Going round, no point of the mic moves faster than
 * the farthest of them from the drum's axis: a stretch whose middle is farther than that from a threshold is decided whole, the
 * others are halved down to half a degree, and one that is decided is not looked at again.
 */
export function rimRing(motion: Motion, clip: Clip): readonly RimArc[] {
  const rim = new Rim(motion, clip);
  const struck = rim.below(0, undefined);
  const tight = rim.below(clip.margin, struck);
  const verdicts = Array.from(
    struck,
    (is, i): Verdict => (is ? 'struck' : tight[i] ? 'tight' : 'clear'),
  );
  const width = 360 / verdicts.length;
  const arcs: RimArc[] = [];
  for (const [i, verdict] of verdicts.entries()) {
    const last = arcs.at(-1);
    const to = (i + 1) * width;
    if (last?.verdict === verdict) arcs[arcs.length - 1] = { ...last, to };
    else arcs.push({ verdict, from: i * width, to });
  }
  return arcs;
}

/** A stretch of the rim: the `index`th of those that `level` halvings make. */
interface Stretch {
  readonly level: number;
  readonly index: number;
}

/** The mic in the middle of a stretch. */
interface Standing {
  readonly placed: PlacedMic;
  readonly shapes: MicShapes;
  /** The box round it and all its places in the stretch. */
  readonly region: Region;
  /** How far any of its points is from the middle's place, mm. */
  readonly room: Mm;
}

class Rim {
  private readonly motion: Motion;
  private readonly clip: Clip;
  private readonly perDegree: Mm;
  private readonly standings = new Map<number, Standing>();

  constructor(motion: Motion, clip: Clip) {
    this.motion = motion;
    this.clip = clip;
    this.perDegree = mmPerDegree(clip);
  }

  /** 1 for each finest stretch in which the clearance is below the threshold (mm); those of `done` are known to be. */
  below(threshold: Mm, done: Uint8Array | undefined): Uint8Array {
    const full = Array.from(
      { length: HALVINGS + 1 },
      (_, level) => new Uint8Array((360 / COARSE) << level),
    );
    const mark = ({ level, index }: Stretch): void => {
      for (let finer = level; finer <= HALVINGS; finer++) {
        full[finer]?.fill(1, index << (finer - level), (index + 1) << (finer - level));
      }
      for (let coarser = level - 1; coarser >= 0; coarser--) {
        const at = index >> (level - coarser);
        const halves = full[coarser + 1];
        const flags = full[coarser];
        if (flags && halves?.[2 * at] && halves[2 * at + 1]) flags[at] = 1;
      }
    };
    for (const [index, is] of (done ?? []).entries()) if (is) mark({ level: HALVINGS, index });
    const look = (stretch: Stretch, ask: Ask): void => {
      const { level, index } = stretch;
      if (full[level]?.[index]) return;
      const standing = this.standing(stretch);
      const { room } = standing;
      const finest = level === HALVINGS;
      const limit = finest ? threshold : threshold + room;
      const tolerance = Math.max(TOLERANCE, room / 8);
      const bounds = {
        limit: limit + tolerance,
        enough: finest ? threshold : threshold - room,
        tolerance,
      };
      const found = ask(standing, bounds);
      if (found >= limit) return;
      if (finest || found <= threshold - room) mark(stretch);
      else {
        look({ level: level + 1, index: 2 * index }, ask);
        look({ level: level + 1, index: 2 * index + 1 }, ask);
      }
    };
    const lookRound = (ask: Ask): void => {
      for (let index = 0; index < 360 / COARSE; index++) look({ level: 0, index }, ask);
    };
    lookRound((standing, bounds) => this.still(standing, bounds));
    const search = new MoveSearch(this.motion.swept, this.standing({ level: 0, index: 0 }).shapes);
    for (const code of this.near(threshold)) {
      lookRound((standing, bounds) => {
        if (!entryMeets(this.motion.swept, code, standing.region, threshold)) return bounds.limit;
        search.hold(standing.shapes);
        return search.entryAt(code, UNMOVED, bounds);
      });
    }
    return full[HALVINGS] ?? new Uint8Array();
  }

  /** Legs and swinging cymbals. */
  private still({ placed }: Standing, bounds: Bounds): Mm {
    return reachOf(this.motion, placed, { ...bounds, among: NOTHING }).clearance;
  }

  /** All that sweeps within reach of the mic somewhere round the rim. */
  private near(threshold: Mm): Int32Array {
    const places = Array.from({ length: 360 / COARSE }, (_, index) =>
      this.standing({ level: 0, index }),
    );
    const solids = places.flatMap(({ placed }) => placed.solids);
    const room = COARSE * this.perDegree;
    return neighbourhood(this.motion.swept, regionOf(solids, vec(room, room, room)), threshold);
  }

  private standing({ level, index }: Stretch): Standing {
    const key = level * 10_000 + index;
    const known = this.standings.get(key);
    if (known) return known;
    const width = COARSE / 2 ** level;
    const placed = atAngle(this.clip, (index + 0.5) * width);
    const room = (width / 2) * this.perDegree;
    const shapes = { right: micShape(placed.solids, 1), left: micShape(placed.solids, -1) };
    const region = regionOf(placed.solids, vec(room, room, room));
    const standing = { placed, shapes, region, room };
    this.standings.set(key, standing);
    return standing;
  }
}

/** Clearance of the mic in one standing, known as far as the bounds ask. */
type Ask = (standing: Standing, bounds: Bounds) => Mm;

const UNMOVED = { x: 0, y: 0 };
const NOTHING = new Int32Array();

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
