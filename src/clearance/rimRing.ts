import { length, perpendicular, subtract } from '../geometry/vector.ts';
import { findMicClass } from '../layout/catalogue/micClasses.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { MicClass } from '../layout/mics/micClass.ts';
import type { ClipMount } from '../layout/mics/mount.ts';
import type { Drum } from '../layout/pieces/drum.ts';
import { clipSolids } from '../rig/mics/clipMic.ts';
import type { MicSolid, PlacedMic } from '../rig/placed.ts';
import { type MicSurroundings, placeMic } from '../rig/placeMic.ts';
import { type Surface, surfaceOf } from '../rig/surface.ts';
import { cosDeg, toRadians } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import { cableRoom } from './cableRoom.ts';
import type { Motion } from './micClearance.ts';
import { micPose } from './micPose.ts';
import { TOLERANCE } from './moveSearch.ts';
import type { Verdict } from './nearest.ts';
import { Sieve } from './sieve.ts';

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

/** Places that are looked at: in the middles of steps of less than half a degree, to which the edges of arcs are exact. */
const PLACES = 768;
const STEP: Degrees = 360 / PLACES;
/** The rim is halved from this many parts on; their ends lie the same way on a mirrored rim. */
const SECTORS = 6;

/** The clip mic at another place round its rim. */
export function atAngle({ mic, mount, surroundings }: Clip, angle: Degrees): PlacedMic {
  return placeMic({ ...mic, mount: { ...mount, angle } }, surroundings);
}

/**
 * Rule R1: the verdict round a drum's rim for a clip with its reach, height and pitch kept; whole turn, starting at 0 degrees. It is that of the places
 * in the middles of 768 even steps. Parts of the rim are halved as long as what moves can't be told to be far enough from all
 * their places, or too near to all (rule C4); each half looks only at what the whole left open.
 */
export function rimRing(motion: Motion, clip: Clip): readonly RimArc[] {
  const arcs: RimArc[] = [];
  for (const [i, verdict] of new Rim(motion, clip).verdicts().entries()) {
    const last = arcs.at(-1);
    const to = (i + 1) * STEP;
    if (last?.verdict === verdict) arcs[arcs.length - 1] = { ...last, to };
    else arcs.push({ verdict, from: i * STEP, to });
  }
  return arcs;
}

/** Places from the `first` up to, but without, the `end`. */
interface Places {
  readonly first: number;
  readonly end: number;
}

class Rim {
  private readonly sieve: Sieve;
  private readonly clip: Clip;
  private readonly micClass: MicClass;
  private readonly surface: Surface;
  private readonly told: Verdict[] = new Array(PLACES).fill('clear');

  constructor(motion: Motion, clip: Clip) {
    this.sieve = new Sieve(motion);
    this.clip = clip;
    this.micClass = classOf(clip);
    this.surface = surfaceOf(clip.drum);
  }

  verdicts(): readonly Verdict[] {
    const all = this.sieve.all();
    const size = PLACES / SECTORS;
    for (let first = 0; first < PLACES; first += size) {
      this.look({ first, end: first + size }, 'tight', all);
    }
    return this.told;
  }

  /** Tells which of the places are as near as a verdict says, or nearer. The list holds all that may matter there. */
  private look({ first, end }: Places, verdict: 'tight' | 'struck', list: Int32Array): void {
    const middle = (first + end) / 2;
    const mount = { ...this.clip.mount, angle: middle * STEP };
    const pose = micPose(clipSolids(this.micClass, mount, this.clip.drum));
    const rooms = this.rooms(pose.solids, ((end - first - 1) / 2) * STEP);
    const question = {
      threshold: verdict === 'tight' ? this.clip.margin : 0,
      rooms,
      room: Math.max(...rooms),
      tolerance: TOLERANCE,
    };
    const finding = this.sieve.ask(pose, question, list);
    if (finding === 'open') {
      const rest = this.sieve.rest();
      this.look({ first, end: middle }, verdict, rest);
      this.look({ first: middle, end }, verdict, rest);
    } else if (finding === 'below') {
      this.told.fill(verdict, first, end);
      // What is struck is tight too: it is looked for only where all is tight.
      if (verdict === 'tight') this.look({ first, end }, 'struck', list);
    }
  }

  /**
   * How far the points of each solid get when the clip goes round by an angle either way. Angles are those of the plan: on a tilted head the rim
   * turns by up to 1/cos(tilt) as much. All turns with the rim but the cable of a right-angled plug.
   */
  private rooms(solids: readonly MicSolid[], angle: Degrees): readonly Mm[] {
    const turn = angle === 0 ? 0 : toRadians(angle) / cosDeg(this.clip.drum.tilt);
    const { centre, normal } = this.surface;
    return solids.map(({ part, capsule: { a, b } }) => {
      const far = Math.max(
        length(perpendicular(subtract(a, centre), normal)),
        length(perpendicular(subtract(b, centre), normal)),
      );
      const hanging = part === 'bend' ? cableRoom(this.micClass, solids, turn) : 0;
      return Math.min(turn, 2) * far + hanging;
    });
  }
}

function classOf({ mic, surroundings }: Clip): MicClass {
  const found = findMicClass(surroundings, mic.micClass);
  if (!found) throw new RangeError(`Mic ${mic.id}: expected a known class, not ${mic.micClass}`);
  return found;
}
