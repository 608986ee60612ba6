import type { Mm } from '../units/quantity.ts';
import { type AxisField, PIECE, planGap } from './axisField.ts';

/** Longest and widest on the plan that pieces of a swept axis are, in cells. */
const LARGEST = 16;

/** A part of an axis as shares of it, and what of it matters: nothing does where `openTo` is not above `openFrom`. */
interface Part {
  from: number;
  to: number;
  openFrom: number;
  openTo: number;
}

/**
 * What an axis sweeps while both its ends go evenly along straight lines, brought down on a field piece by piece. The ends' places are read
 * from `places`, in hand space.
 */
export class SweptAxis {
  /** The part of the axis that {@link lower} is to bring down or has left, as shares of it: from where to where. */
  readonly part: Part = { from: 0, to: 1, openFrom: 0, openTo: 1 };
  /** Whether nothing is to be left: places too far off then count as anywhere within reach. */
  leavesNothing = false;
  private readonly field: AxisField;
  private readonly places: Float64Array;
  /** Start and end of the axis at first, then at last, as a piece. */
  private readonly whole = new Float64Array(PIECE);
  /** The same in a part of the time. */
  private readonly moment = new Float64Array(PIECE);

  constructor(field: AxisField, places: Float64Array) {
    this.field = field;
    this.places = places;
  }

  /** Takes an axis by where its two ends are at first, and where at last, in `places`. */
  take(start: number, end: number, startLater: number, endLater: number): void {
    this.put(0, start);
    this.put(3, end);
    this.put(6, startLater);
    this.put(9, endLater);
  }

  private put(k: number, place: number): void {
    const { field, places, whole } = this;
    whole[k] = field.cellsAcross(places[place] as number);
    whole[k + 1] = field.cellsAhead(places[place + 1] as number);
    whole[k + 2] = places[place + 2] as number;
  }

  /**
   * Lowers the field to the axis. The true axis is at most `startOff` mm off at its start, `endOff` at its end, and evenly in between. Pieces that may
   * be too far off for the field are left, and those of them that matter are left open.
   *
   * How an axis is cut does not depend on what the field knows, and a piece is passed over only where it would change nothing: so the field does not
   * depend on the order in which axes come.
   */
  lower(startOff: Mm, endOff: Mm): void {
    const { whole, part } = this;
    const { bow } = this.field.ball;
    const { from, to, openFrom, openTo } = part;
    const long = Math.max(planGap(whole, 0, 3), planGap(whole, 6, 9)) * (to - from);
    const way = Math.max(planGap(whole, 0, 6), planGap(whole, 3, 9));
    const pieces = Math.ceil(long / LARGEST) || 1;
    const times = Math.ceil(way / LARGEST) || 1;
    part.from = 1;
    part.to = 0;
    part.openFrom = 1;
    part.openTo = 0;
    for (let k = 0; k < times; k++) {
      this.cut(k / times, (k + 1) / times);
      this.goTo(from);
      let s = from;
      for (let i = 1; i <= pieces; i++) {
        const r = i < pieces ? from + (i / pieces) * (to - from) : to;
        const off = Math.max(mixed(startOff, endOff, s), mixed(startOff, endOff, r));
        this.goOn(r);
        if (off > bow && !this.leavesNothing) leave(part, s, r);
        if (s < openTo && r > openFrom && this.field.meets(off)) this.lowerPiece(off, s, r);
        s = r;
      }
    }
  }

  private lowerPiece(off: Mm, from: number, to: number): void {
    const { field, part } = this;
    if (off <= field.ball.bow) field.sample();
    else if (this.leavesNothing) field.flood(off);
    else {
      if (from < part.openFrom) part.openFrom = from;
      if (to > part.openTo) part.openTo = to;
    }
  }

  /** Cuts the axis out of the time between two shares of it. */
  private cut(first: number, last: number): void {
    const { whole, moment } = this;
    for (let k = 0; k < PIECE / 2; k++) {
      const a = whole[k] as number;
      const b = whole[k + 6] as number;
      moment[k] = mixed(a, b, first);
      moment[k + 6] = mixed(a, b, last);
    }
  }

  /** Lets the field's piece go on from its far ends to a share of the axis. */
  private goOn(share: number): void {
    const { piece } = this.field;
    for (let k = 0; k < 3; k++) {
      piece[k] = piece[k + 3] as number;
      piece[k + 6] = piece[k + 9] as number;
    }
    this.goTo(share);
  }

  /** Sets the far ends of the field's piece to a share of the axis. */
  private goTo(share: number): void {
    const { moment } = this;
    const { piece } = this.field;
    for (let k = 0; k < 3; k++) {
      piece[k + 3] = mixed(moment[k] as number, moment[k + 3] as number, share);
      piece[k + 9] = mixed(moment[k + 6] as number, moment[k + 9] as number, share);
    }
  }
}

function leave(part: Part, from: number, to: number): void {
  if (from < part.from) part.from = from;
  if (to > part.to) part.to = to;
}

const mixed = (a: number, b: number, share: number): number => a + share * (b - a);
