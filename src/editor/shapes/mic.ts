import { convexHull } from '../../geometry/convexPolygon.ts';
import { along } from '../../geometry/vector.ts';
import type { MicPart, MicSolid, PlacedMic } from '../../rig/placed.ts';
import {
  addLine,
  fillPath,
  type Pen,
  strokePath,
  strokeThick,
  traceDisc,
  traceLine,
  tracePolygon,
} from './pen.ts';

/** Parts over the deck. What stands on the deck is drawn with the footprints, below the kit. */
type UpperPart = Exclude<MicPart, 'base'>;

/** Drawn in this order, so that the mic lies over what holds it. */
const ORDER: readonly UpperPart[] = [
  'mast',
  'boom',
  'clipArm',
  'bend',
  'connector',
  'plate',
  'body',
];

/** Least widths on the screen, px, so that a thin tube can still be seen and told from a line. */
const LEAST: Readonly<Record<UpperPart, number>> = {
  mast: 5,
  boom: 2,
  clipArm: 2.5,
  bend: 1.5,
  connector: 3,
  plate: 5,
  body: 7,
};

/**
 * A mic with what holds it, at true size: a capsule from above is a line as wide as the capsule with round ends. Each part has
 * an edge in the ground's colour, so that crossing booms stay apart.
 */
export function paintMic(pen: Pen, placed: PlacedMic): void {
  pen.canvas.lineCap = 'round';
  for (const part of ORDER) {
    paintPart(
      pen,
      part,
      placed.solids.filter((solid) => solid.part === part),
    );
  }
  if (placed.stand) paintClutch(pen, placed);
  paintGrille(pen, placed);
}

/** One part of a mic, which can be of several capsules: their edges first, so that they read as one body. */
function paintPart(pen: Pen, part: UpperPart, solids: readonly MicSolid[]): void {
  const { colours, px } = pen;
  const isMic = part === 'body' || part === 'plate';
  const coats: readonly (readonly [colour: string, more: number])[] = isMic
    ? [
        [colours.halo, 5],
        [colours.mic, 2],
        [colours.micFill, -0.5],
      ]
    : [
        [colours.halo, 3],
        [colours.micStand, 0],
      ];
  if (part === 'plate') pen.canvas.lineJoin = 'round';
  for (const [colour, more] of coats) {
    if (part === 'plate') tracePlate(pen, solids);
    else {
      pen.canvas.beginPath();
      for (const { capsule } of solids) addLine(pen, [capsule.a, capsule.b]);
    }
    strokeThick(pen, colour, widthOf(solids) + more * px, LEAST[part] + more);
    if (part === 'plate') fillPath(pen, colour);
  }
}

/** A plate is modelled as bars side by side: seen from above it is all that lies between them. */
function tracePlate(pen: Pen, bars: readonly MicSolid[]): void {
  const hull = convexHull(bars.flatMap(({ capsule }) => [capsule.a, capsule.b]));
  if (hull) tracePolygon(pen, hull.corners);
}

const widthOf = (solids: readonly MicSolid[]): number =>
  solids.reduce((most, { capsule }) => Math.max(most, 2 * capsule.radius), 0);

function paintClutch(pen: Pen, placed: PlacedMic): void {
  if (!placed.stand) return;
  traceDisc(pen, placed.stand.clutch, Math.max(16, 4 * pen.px));
  fillPath(pen, pen.colours.hardwareFill);
  strokePath(pen, pen.colours.micStand, 1.5);
}

/** Share of the body that the grille takes, for drawing. */
const GRILLE = 0.3;

/** The front of the mic, in full colour, so that one sees which way it looks. */
function paintGrille(pen: Pen, placed: PlacedMic): void {
  const body = placed.solids.find((solid) => solid.part === 'body');
  if (!body) return;
  const { a, b, radius } = body.capsule;
  const front =
    Math.hypot(a.x - placed.tip.x, a.y - placed.tip.y) <
    Math.hypot(b.x - placed.tip.x, b.y - placed.tip.y);
  const [near, far] = front ? [a, b] : [b, a];
  const reach = { x: far.x - near.x, y: far.y - near.y, z: far.z - near.z };
  traceLine(pen, near, along(near, reach, GRILLE));
  strokeThick(pen, pen.colours.mic, 2 * radius, LEAST.body);
}
