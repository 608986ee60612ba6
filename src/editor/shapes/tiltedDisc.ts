import type { Vec2 } from '../../geometry/vector.ts';
import type { Surface } from '../../rig/surface.ts';
import { FULL_TURN, type Pen } from './pen.ts';

/**
 * A disc in space as it looks from straight above: the true ellipse, with its full radius across the lean and its radius times
 * the normal's upward part along it.
 */
interface SeenDisc {
  readonly along: number;
  readonly across: number;
  /** Direction of the lean on the plan, radians. */
  readonly toward: number;
}

const seen = ({ normal, radius }: Pick<Surface, 'normal' | 'radius'>): SeenDisc => ({
  along: radius * Math.abs(normal.z),
  across: radius,
  toward: Math.atan2(normal.y, normal.x),
});

/** The ellipse of a disc as a new path. */
export function traceTiltedDisc(pen: Pen, disc: Surface): void {
  pen.canvas.beginPath();
  addTiltedDisc(pen, disc);
}

/** Adds the ellipse of a disc to the path. */
export function addTiltedDisc(pen: Pen, disc: Surface): void {
  const { along, across, toward } = seen(disc);
  pen.canvas.ellipse(disc.centre.x, disc.centre.y, along, across, toward, 0, FULL_TURN);
}

/**
 * The outline of a shell below a leaning head: from one side of the head round the far side of the lower edge to the other
 * side. A closed path; a level shell hides wholly below its head.
 */
export function traceShellBelow(pen: Pen, head: Surface, depth: number): void {
  const { along, across, toward } = seen(head);
  const low = lowerCentre(head, depth);
  const side = { x: -Math.sin(toward) * across, y: Math.cos(toward) * across };
  pen.canvas.beginPath();
  pen.canvas.moveTo(head.centre.x + side.x, head.centre.y + side.y);
  pen.canvas.lineTo(low.x + side.x, low.y + side.y);
  pen.canvas.ellipse(low.x, low.y, along, across, toward, Math.PI / 2, 1.5 * Math.PI);
  pen.canvas.lineTo(head.centre.x - side.x, head.centre.y - side.y);
  pen.canvas.closePath();
}

/** Where the centre of a shell's lower edge lies on the plan. */
const lowerCentre = ({ centre, normal }: Surface, depth: number): Vec2 => ({
  x: centre.x - normal.x * depth,
  y: centre.y - normal.y * depth,
});

/** The same disc with another radius. */
export const resized = (disc: Surface, radius: number): Surface => ({ ...disc, radius });
