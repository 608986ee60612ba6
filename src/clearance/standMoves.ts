import { length, subtract, type Vec2, type Vec3 } from '../geometry/vector.ts';
import { standSpec } from '../layout/catalogue/standClasses.ts';
import { BOOM_TAIL } from '../rig/mics/standMic.ts';
import type { MicSolid, PlacedStand } from '../rig/placed.ts';
import type { Mm, Radians } from '../units/quantity.ts';
import { farther, type PointMove } from './clearSpotFamily.ts';

/** How a mic moves whose tip shifts by at most some mm and which keeps its aim. */
export interface HeldMoves {
  readonly shift: Mm;
  /** How much its body turns at most. */
  readonly turn: Radians;
  /** How far away what it is aimed at is; with a body that spins, on the plan. Infinite where it keeps its direction. */
  readonly away: Mm;
  /** Whether its body also turns with its azimuth, as that of a side-address mic. */
  readonly spins: boolean;
}

/**
 * The move of a point that is held with a mic. A direction to something D away turns by at most 1 / D per mm of shift, and that rate itself changes by
 * at most 3 / D^2 per mm (10 / D^2 for a body that spins): what the shifts along three axes do one by one then adds up to the whole but for 1.2 of
 * that times the squared shift.
 */
export const heldMove =
  (tip: Vec3, { shift, turn, away, spins }: HeldMoves) =>
  (point: Vec3): PointMove => {
    const far = length(subtract(point, tip));
    const seen = shift < away ? shift / (away - shift) : Number.POSITIVE_INFINITY;
    const bend = shift === 0 ? 0 : 1.2 * (spins ? 10 : 3) * seen * seen * far;
    return { room: shift + Math.min(2, turn) * far, bend };
  };

/** What moves a stand. */
export interface StandMove {
  readonly held: (point: Vec3) => PointMove;
  /** How much the base is turned about the pivot; undefined for a stand without a boom, which goes along with the hold point. */
  readonly turn: Radians | undefined;
  readonly pivot: Vec2;
  /** The height asked for the clutch; null: it follows the hold point. */
  readonly mast: Mm | null;
}

/** The moves of a stand's parts. */
export class StandMoves {
  /** Most that what it falls short changes by, mm. */
  readonly beyondReach: Mm;
  readonly base: Mm;
  private readonly stand: PlacedStand;
  private readonly move: StandMove;
  private readonly hold: PointMove;
  private readonly clutch: PointMove;

  constructor(stand: PlacedStand, move: StandMove) {
    this.stand = stand;
    this.move = move;
    this.hold = move.held(stand.hold);
    const base = this.foot(stand.footprint.hub);
    this.base = base.room;
    this.clutch = move.turn === undefined ? this.hold : this.clutchMove(base);
    this.beyondReach = this.hold.room + this.clutch.room;
  }

  of({ part, capsule: { a, b } }: MicSolid): PointMove {
    if (part === 'base') return farther(this.foot(a), this.foot(b));
    if (part === 'mast') return this.clutch;
    return b === this.stand.clutch ? this.tail() : farther(this.clutch, this.hold);
  }

  /** A point of the base goes round the pivot on an arc, which bends from its chord by an eighth of the squared turn. */
  private foot({ x, y }: Vec2): PointMove {
    const { turn, pivot } = this.move;
    if (turn === undefined) return this.hold;
    const radius = Math.hypot(x - pivot.x, y - pivot.y);
    return { room: Math.min(2, turn) * radius, bend: (turn * turn * radius) / 8 };
  }

  /** Where the mast comes to an end of its range on the way, its height does not add up from what each value does. */
  private clutchMove(base: PointMove): PointMove {
    if (this.move.mast !== null) return base;
    const { mastMin, mastMax } = standSpec(this.stand.standClass);
    const { hold } = this;
    const ends = [mastMin, mastMax].some((end) => Math.abs(this.stand.hold.z - end) <= hold.room);
    return {
      room: Math.hypot(base.room, hold.room),
      bend: ends ? Number.POSITIVE_INFINITY : base.bend + hold.bend,
    };
  }

  /** The tail turns with the boom: a unit vector along v changes by at most 2 |dv| / (|v| + |v + dv|). */
  private tail(): PointMove {
    const both = this.clutch.room + this.hold.room;
    const twice = 2 * this.stand.boomLength - both;
    const turned = twice > both ? (2 * both) / twice : 2;
    return {
      room: this.clutch.room + BOOM_TAIL * turned,
      bend: both === 0 ? 0 : Number.POSITIVE_INFINITY,
    };
  }
}
