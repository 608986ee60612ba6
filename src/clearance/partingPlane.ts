import { BUTT, ELBOW, GRIP, POSITION, TIP } from '../player/arm.ts';
import type { Mm } from '../units/quantity.ts';
import type { MicShape } from './micShape.ts';
import { type BoxedMove, FOREARM, HAND, PARTS, STICK, type SweptMoves } from './sweptMoves.ts';

/**
 * The direction from a mic to the arm that kept them apart in the last move, tried first in the next: moves that follow each other in the list
 * begin at the same piece, so that most of them are kept off by the same plane, for less than it costs to look at their boxes.
 *
 * Along the direction a part stays at or above the lowest of its ends at the times between a move's intervals, less what these bend in an interval;
 * a solid of the mic reaches no farther than the farther of its ends.
 */
export class PartingPlane {
  private readonly swept: SweptMoves;
  /** The mic in the hand space that the direction is given in; undefined where there is none yet. */
  private shape: MicShape | undefined;
  private x = 0;
  private y = 0;
  private z = 0;
  /**
   * Along the direction, mm: how far each solid of the mic reaches (then all of them, and each half of them, as the boxes of a shape are in a row),
   * and where each part of the arm begins in the move.
   */
  private readonly reaches: Float64Array;
  private readonly begins = new Float64Array(PARTS);
  /** The least gap told of in this move, and its direction. */
  private least: Mm = Number.POSITIVE_INFINITY;
  private leastX = 0;
  private leastY = 0;
  private leastZ = 0;

  constructor(swept: SweptMoves, { count }: MicShape) {
    this.swept = swept;
    this.reaches = new Float64Array(count + 3);
  }

  /** Goes on to a move. */
  begin(move: BoxedMove, shape: MicShape): void {
    this.least = Number.POSITIVE_INFINITY;
    if (this.shape === shape) this.placeParts(move);
    else this.begins.fill(Number.NEGATIVE_INFINITY);
  }

  /** Whether a part and a solid, or several (as for {@link MicShape.boxes}), are known to stay so far apart throughout the move. */
  keeps(part: number, solid: number, apart: Mm): boolean {
    return (this.begins[part] as number) - (this.reaches[solid] as number) >= apart;
  }

  /** Tells of a gap in this move that is so wide in the direction (x, y, z). */
  offer(gap: Mm, x: number, y: number, z: number): void {
    if (gap >= this.least) return;
    this.least = gap;
    this.leastX = x;
    this.leastY = y;
    this.leastZ = z;
  }

  /** Ends the move: the direction of the least gap in it is tried next. */
  end(shape: MicShape): void {
    if (this.least === Number.POSITIVE_INFINITY) return;
    this.shape = shape;
    this.x = this.leastX;
    this.y = this.leastY;
    this.z = this.leastZ;
    this.placeSolids(shape);
  }

  private placeSolids({ axes, radii, count, middle }: MicShape): void {
    const { reaches } = this;
    for (let half = 0; half < 2; half++) {
      const end = half === 0 ? middle : count;
      let most = Number.NEGATIVE_INFINITY;
      for (let solid = half === 0 ? 0 : middle; solid < end; solid++) {
        const a = this.along(axes, solid * 6);
        const b = this.along(axes, solid * 6 + 3);
        const reach = (a > b ? a : b) + (radii[solid] as number);
        reaches[solid] = reach;
        if (reach > most) most = reach;
      }
      reaches[count + 1 + half] = most;
    }
    reaches[count] = Math.max(reaches[count + 1] as number, reaches[count + 2] as number);
  }

  private placeParts(move: BoxedMove): void {
    const { arm, positions } = this.swept;
    const { bend } = move.move;
    // The least of each point's places at the times between the move's intervals.
    let elbow = Number.POSITIVE_INFINITY;
    let grip = Number.POSITIVE_INFINITY;
    let butt = Number.POSITIVE_INFINITY;
    let tip = Number.POSITIVE_INFINITY;
    const end = move.position + (move.intervals + 1) * POSITION;
    for (let i = move.position; i < end; i += POSITION) {
      const elbowAt = this.along(positions, i + ELBOW);
      const gripAt = this.along(positions, i + GRIP);
      const buttAt = this.along(positions, i + BUTT);
      const tipAt = this.along(positions, i + TIP);
      if (elbowAt < elbow) elbow = elbowAt;
      if (gripAt < grip) grip = gripAt;
      if (buttAt < butt) butt = buttAt;
      if (tipAt < tip) tip = tipAt;
    }
    const bow = 1 / (8 * move.intervals * move.intervals);
    elbow -= this.swept.mostElbowBow(move);
    grip -= bend.grip * bow;
    butt -= bend.butt * bow;
    tip -= bend.tip * bow;
    this.begins[STICK] = Math.min(butt, tip) - arm.parts[STICK].radius;
    this.begins[HAND] = grip - arm.parts[HAND].radius;
    this.begins[FOREARM] = Math.min(elbow, grip) - arm.parts[FOREARM].radius;
  }

  private along(p: Float64Array, i: number): Mm {
    return (
      (p[i] as number) * this.x + (p[i + 1] as number) * this.y + (p[i + 2] as number) * this.z
    );
  }
}
