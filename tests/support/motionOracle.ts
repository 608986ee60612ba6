import {
  add,
  along,
  cross,
  distance,
  dot,
  length,
  scale,
  subtract,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import type { Piece, Struck } from '../../src/layout/pieces/piece.ts';
import type { Player } from '../../src/layout/player.ts';
import bodyTable from '../fixtures/reference/ansur_by_stature.csv?raw';

/**
 * A second implementation of the model of player and moves, written from the model's description and not from its code: in the kit
 * frame, with rotations by Rodrigues' formula, angles by the law of cosines and body lengths read from the published table. It shares
 * only types and the sums and products of vectors with the program, and is slow and plain on purpose.
 */

/** One position of an arm, kit frame, mm. */
export interface OraclePose {
  readonly elbow: Vec3;
  readonly grip: Vec3;
  readonly butt: Vec3;
  readonly tip: Vec3;
}

export interface OracleMove {
  readonly hand: 'right' | 'left';
  readonly from: string | null;
  readonly on: string;
  at(t: number): OraclePose;
}

/** A leg at rest with the foot on a pedal (null: on the deck). */
export interface OracleLeg {
  readonly foot: 'right' | 'left';
  readonly pedal: string | null;
  readonly hip: Vec3;
  readonly knee: Vec3;
  readonly ankle: Vec3;
}

/** Where a cymbal swings: a disc about its centre. */
export interface OracleSwing {
  readonly cymbal: string;
  readonly centre: Vec3;
  readonly normal: Vec3;
  readonly radius: number;
}

export interface OracleMotion {
  readonly moves: readonly OracleMove[];
  readonly legs: readonly OracleLeg[];
  readonly swings: readonly OracleSwing[];
}

/** Everything that moves. */
export const oracleMotion = (player: Player, pieces: readonly Piece[]): OracleMotion => ({
  moves: oracleMoves(player, pieces),
  legs: oracleLegs(player, pieces),
  swings: pieces.flatMap((piece) =>
    piece.kind === 'crash' ||
    piece.kind === 'ride' ||
    piece.kind === 'splash' ||
    piece.kind === 'china'
      ? [{ cymbal: piece.id, ...discOf(piece) }]
      : [],
  ),
});

const table = new Map(
  bodyTable
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','))
    .map(([measure = '', intercept, slope]) => [
      measure,
      { intercept: Number(intercept), slope: Number(slope) },
    ]),
);

/** A body length from the table's line on stature, or as measured. */
function bodyLength(measure: string, player: Player, measured: number | undefined): number {
  const line = table.get(measure);
  if (!line) throw new Error(`the table has no ${measure}`);
  return measured ?? line.intercept + line.slope * player.stature;
}

interface ArmLengths {
  readonly shoulder: Vec3;
  readonly upper: number;
  readonly fore: number;
}

function armOf(player: Player, h: number): ArmLengths {
  const { body } = player;
  const height = bodyLength('acromialHeightSitting', player, body.acromialHeightSitting);
  const breadth = bodyLength('biacromialBreadth', player, body.biacromialBreadth);
  const stylion = bodyLength('radialeStylionLength', player, body.radialeStylion);
  const grip = bodyLength('stylionToGripCentre', player, body.stylionToGripCentre);
  return {
    shoulder: vec((h * breadth) / 2, 0, player.seatHeight + height),
    upper: bodyLength('acromionRadialeLength', player, body.acromionRadiale),
    fore: stylion + grip,
  };
}

const radians = (degrees: number): number => (degrees / 180) * Math.PI;
const normalised = (p: Vec3): Vec3 => scale(p, 1 / length(p));
const UP = vec(0, 0, 1);

/** Rodrigues: p turned by an angle about a unit axis. */
function turned(p: Vec3, axis: Vec3, angle: number): Vec3 {
  const c = Math.cos(angle);
  const across = scale(cross(axis, p), Math.sin(angle));
  return add(add(scale(p, c), across), scale(axis, dot(axis, p) * (1 - c)));
}

/** The playing surface: z turned by the tilt toward the direction it leans to. */
function discOf(piece: Struck): Omit<OracleSwing, 'cymbal'> {
  const lean = radians(piece.tiltToward);
  const axis = vec(-Math.sin(lean), Math.cos(lean), 0);
  return {
    centre: vec(piece.x, piece.y, piece.z),
    normal: turned(UP, axis, radians(piece.tilt)),
    radius: piece.diameter / 2,
  };
}

function contactOf(kind: Struck['kind']): { share: number; attack: number; behind: number } {
  if (kind === 'hiHat') return { share: 0.8, attack: 10, behind: 0 };
  if (kind === 'ride') return { share: 0.55, attack: 10, behind: 0 };
  if (kind === 'crash' || kind === 'splash' || kind === 'china') {
    return { share: 1, attack: -10, behind: 80 };
  }
  return { share: 0, attack: 10, behind: 0 };
}

/** Grip and stick direction of a stroke, as a function of how far it is raised. */
type Raise = (s: number) => { readonly grip: Vec3; readonly stick: Vec3 };

function raiseOf(piece: Struck, player: Player, { shoulder }: ArmLengths): Raise {
  const { centre, normal, radius } = discOf(piece);
  const { share, attack, behind } = contactOf(piece.kind);
  const reach = player.stick.length - player.stick.butt;
  const toShoulder = subtract(shoulder, centre);
  const e = normalised(along(toShoulder, normal, -dot(toShoulder, normal)));
  const strikePoint = share === 0 ? centre : along(centre, e, share * radius);
  const a = normalised(vec(strikePoint.x - shoulder.x, strikePoint.y - shoulder.y, 0));
  const f = normalised(along(a, normal, -dot(a, normal)));
  const u = turned(f, cross(normal, f), radians(attack));
  const grip = along(strikePoint, u, behind - reach);
  const eps = Math.asin(u.z);
  const height = player.strokeHeight;
  const top = Math.asin(Math.min(1, Math.sin(eps) + (2 * height) / 3 / reach));
  // Where the stick already stands steeper than 85 degrees at contact the description would turn it down: it is taken not to turn.
  const theta = Math.max(0, Math.min(radians(85), top) - eps);
  const k = normalised(cross(u, UP));
  return (s) => ({
    grip: along(grip, UP, (s * height) / 3),
    stick: turned(u, k, s * theta),
  });
}

/** The whole arm for a grip and a stick direction. */
function poseOf(grip: Vec3, stick: Vec3, player: Player, h: number): OraclePose {
  const { shoulder, upper, fore } = armOf(player, h);
  const straight = 0.98 * (upper + fore);
  const line = normalised(subtract(grip, shoulder));
  const lean = Math.min(player.lean, Math.max(0, distance(grip, shoulder) - straight));
  const moved = along(shoulder, line, lean);
  // Beyond all reach the arm stays as at full stretch.
  const apart = Math.min(straight, distance(grip, moved));
  const cosine = (upper * upper + apart * apart - fore * fore) / (2 * upper * apart);
  const angle = Math.acos(Math.min(1, Math.max(-1, cosine)));
  const hang = vec(0.5 * h, 0, -0.87);
  const side = normalised(along(hang, line, -dot(hang, line)));
  const elbowWay = turned(line, cross(line, side), angle);
  return {
    elbow: along(moved, elbowWay, upper),
    grip,
    butt: along(grip, stick, -player.stick.butt),
    tip: along(grip, stick, player.stick.length - player.stick.butt),
  };
}

const handPlays = (piece: Struck, hand: 'right' | 'left', player: Player): boolean => {
  const { hands } = piece;
  if (piece.kind === 'hiHat' && hands === 'both' && player.hiHat !== 'either') {
    if (player.hiHat === 'crossed') return hand === player.leadHand;
    if (piece.x === 0) return hand !== player.leadHand;
    return hand === (piece.x < 0 ? 'left' : 'right');
  }
  return hands === 'both' || hands === hand || (hands === 'lead' && player.leadHand === hand);
};

function oracleMoves(player: Player, pieces: readonly Piece[]): OracleMove[] {
  const struck = pieces.filter(
    (piece): piece is Struck =>
      piece.kind !== 'kick' && piece.kind !== 'pedal' && piece.kind !== 'throne',
  );
  return (['right', 'left'] as const).flatMap((hand) => {
    const h = hand === 'right' ? 1 : -1;
    const arm = armOf(player, h);
    const played = struck
      .filter((piece) => handPlays(piece, hand, player))
      .map((piece) => ({ id: piece.id, raise: raiseOf(piece, player, arm) }));
    const pose = (grip: Vec3, stick: Vec3) => poseOf(grip, stick, player, h);
    return played.flatMap(({ id, raise }): OracleMove[] => [
      {
        hand,
        from: null,
        on: id,
        at: (t) => {
          const { grip, stick } = raise(t);
          return pose(grip, stick);
        },
      },
      ...played
        .filter((to) => to.id !== id)
        .map((to): OracleMove => {
          const way = travel(raise(0.5), to.raise(1), arm.shoulder);
          return {
            hand,
            from: id,
            on: to.id,
            at: (t) => {
              const { grip, stick } = way(t);
              return pose(grip, stick);
            },
          };
        }),
    ]);
  });
}

/** From one grip and stick to another, round the vertical line through the shoulder. */
function travel(a: ReturnType<Raise>, b: ReturnType<Raise>, shoulder: Vec3): Raise {
  const polar = ({ x, y }: Vec3) => ({
    r: Math.hypot(x - shoulder.x, y - shoulder.y),
    azimuth: Math.atan2(y - shoulder.y, x - shoulder.x),
  });
  const from = polar(a.grip);
  const to = polar(b.grip);
  const turn = to.azimuth - from.azimuth;
  const shortTurn = Math.atan2(Math.sin(turn), Math.cos(turn));
  const hop = Math.min(100, 0.2 * distance(a.grip, b.grip));
  return (t) => {
    const r = (1 - t) * from.r + t * to.r;
    const azimuth = from.azimuth + t * shortTurn;
    const z = (1 - t) * a.grip.z + t * b.grip.z + 4 * hop * t * (1 - t);
    return {
      grip: vec(shoulder.x + r * Math.cos(azimuth), shoulder.y + r * Math.sin(azimuth), z),
      stick: normalised(add(scale(a.stick, 1 - t), scale(b.stick, t))),
    };
  };
}

function oracleLegs(player: Player, pieces: readonly Piece[]): OracleLeg[] {
  return (['right', 'left'] as const).flatMap((foot) => {
    const h = foot === 'right' ? 1 : -1;
    const pedals = pieces.flatMap((piece) =>
      piece.kind === 'pedal' && piece.foot === foot ? [piece] : [],
    );
    const thigh = bodyLength('buttockKneeLength', player, player.body.buttockKneeLength) - 100;
    // The description is silent on a foot without a pedal: it is taken to rest in front of the seat.
    const resting = { id: null, x: 150 * h, y: 60 + 0.95 * thigh };
    return (pedals.length > 0 ? pedals : [resting]).map(
      ({ id, x, y }): OracleLeg => ({
        foot,
        pedal: id,
        ...bentLeg(vec(x, y, 90), thigh, player, h),
      }),
    );
  });
}

/** The knee stands up out of the upright plane through hip and ankle; a leg that is too short for the way is straight. */
function bentLeg(
  ankle: Vec3,
  thigh: number,
  player: Player,
  h: number,
): Pick<OracleLeg, 'hip' | 'knee' | 'ankle'> {
  const shin = bodyLength('kneeHeightSitting', player, player.body.kneeHeightSitting) - 90;
  const hip = vec(90 * h, 60, player.seatHeight + 90);
  const apart = distance(hip, ankle);
  const cosine = (thigh * thigh + apart * apart - shin * shin) / (2 * thigh * apart);
  const angle = Math.acos(Math.min(1, Math.max(-1, cosine)));
  const line = normalised(subtract(ankle, hip));
  const upward = normalised(along(UP, line, -dot(UP, line)));
  const knee = along(hip, turned(line, cross(line, upward), angle), thigh);
  return { hip, knee, ankle };
}
