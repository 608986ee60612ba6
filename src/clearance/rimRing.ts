import {
  along,
  distance,
  dot,
  length,
  perpendicular,
  subtract,
  type Vec3,
} from '../geometry/vector.ts';
import { findMicClass } from '../layout/catalogue/micClasses.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { MicClass } from '../layout/mics/micClass.ts';
import type { ClipMount } from '../layout/mics/mount.ts';
import type { Drum } from '../layout/pieces/drum.ts';
import { clipSolids } from '../rig/mics/clipMic.ts';
import type { MicSolid, PlacedMic } from '../rig/placed.ts';
import { type MicSurroundings, placeMic } from '../rig/placeMic.ts';
import { rimDirection } from '../rig/rimDirection.ts';
import { type Surface, surfaceOf } from '../rig/surface.ts';
import { cosDeg, sinDeg, toRadians } from '../units/angle.ts';
import type { Degrees, Mm, Radians } from '../units/quantity.ts';
import { cableRoom } from './cableRoom.ts';
import type { Motion } from './micClearance.ts';
import { type MicPose, micPose } from './micPose.ts';
import type { Verdict } from './nearest.ts';
import { TOLERANCE } from './searchBounds.ts';
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
const PARTS = 48;
const NONE = new Int32Array(0);

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

/** The clip in the middle of some places, and how far its solids may be from there in the others, mm. */
interface Posed extends Places {
  readonly angle: Degrees;
  readonly pose: MicPose;
  readonly rooms: readonly Mm[];
  readonly room: Mm;
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
    const size = PLACES / PARTS;
    const parts = Array.from({ length: PARTS }, (_, k) =>
      this.posed({ first: k * size, end: (k + 1) * size }),
    );
    const lists = this.around(parts);
    for (const [k, part] of parts.entries()) this.look(part, 'tight', lists[k] ?? NONE);
    return this.told;
  }

  /** What may matter in each of some parts of the rim: the mic keeps within a ball, whose middle goes round on a circle. */
  private around(parts: readonly Posed[]): readonly Int32Array[] {
    const { pose } = parts[0] ?? this.posed({ first: 0, end: PLACES });
    const from = subtract(pose.centre, this.surface.centre);
    const { normal } = this.surface;
    const circle = {
      centre: along(this.surface.centre, normal, dot(from, normal)),
      normal,
      radius: length(perpendicular(from, normal)),
    };
    const middles = parts.map(({ angle }) =>
      along(circle.centre, rimDirection(this.surface, angle), circle.radius),
    );
    const limit = this.sizeAbout(middles[0] ?? pose.centre, pose) + this.clip.margin;
    const room = Math.max(...parts.map((part) => part.room));
    return this.sieve.nearEach(middles, limit + room, this.sieve.near(circle, limit));
  }

  /** How far any point of the mic is from one that goes round with it, wherever it is clipped on. */
  private sizeAbout(middle: Vec3, { solids }: MicPose): Mm {
    const sizes = solids.map(({ part, capsule: { a, b, radius } }) => {
      const hanging = part === 'bend' ? this.hanging(solids, Number.POSITIVE_INFINITY) : 0;
      return Math.max(distance(a, middle), distance(b, middle)) + radius + hanging;
    });
    return Math.max(...sizes);
  }

  private posed(places: Places): Posed {
    const { first, end } = places;
    const angle = ((first + end) / 2) * STEP;
    const pose = micPose(clipSolids(this.micClass, { ...this.clip.mount, angle }, this.clip.drum));
    const rooms = this.rooms(pose.solids, ((end - first - 1) / 2) * STEP);
    return { ...places, angle, pose, rooms, room: Math.max(...rooms) };
  }

  /** Tells which of the places are as near as a verdict says, or nearer. The list holds all that may matter there. */
  private look(posed: Posed, verdict: 'tight' | 'struck', list: Int32Array): void {
    const { first, end, pose, rooms, room } = posed;
    const threshold = verdict === 'tight' ? this.clip.margin : 0;
    const finding = this.sieve.ask(pose, { threshold, rooms, room, tolerance: TOLERANCE }, list);
    if (finding === 'open') {
      const middle = (first + end) / 2;
      const rest = this.sieve.rest();
      this.look(this.posed({ first, end: middle }), verdict, rest);
      this.look(this.posed({ first: middle, end }), verdict, rest);
    } else if (finding === 'below') {
      this.told.fill(verdict, first, end);
      // What is struck is tight too: it is looked for only where all is tight.
      if (verdict === 'tight') this.look(posed, 'struck', list);
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
      const hanging = part === 'bend' ? this.hanging(solids, turn) : 0;
      return Math.min(turn, 2) * far + hanging;
    });
  }

  /**
   * How far the cable of a right-angled plug gets beside what turns with the rim. To what is on the rim it looks as if the plumb line went round the
   * head's normal on a cone, and turned by as much as that takes: the chord is at most the arc, and nowhere more than the cone is wide.
   */
  private hanging(solids: readonly MicSolid[], turn: Radians): Mm {
    const { tilt } = this.clip.drum;
    const plumb = Math.min(turn * sinDeg(tilt), 2 * toRadians(tilt));
    return tilt === 0 ? 0 : cableRoom(this.micClass, solids, plumb);
  }
}

function classOf({ mic, surroundings }: Clip): MicClass {
  const found = findMicClass(surroundings, mic.micClass);
  if (!found) throw new RangeError(`Mic ${mic.id}: expected a known class, not ${mic.micClass}`);
  return found;
}
