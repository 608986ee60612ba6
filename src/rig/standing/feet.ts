import { type Bounds, boundsMeet, boundsOfCapsule } from '../../geometry/bounds.ts';
import { capsuleToCylinder } from '../../geometry/capsuleContact.ts';
import { listed } from '../../geometry/listed.ts';
import { gap, nearestOnSegment } from '../../geometry/plan.ts';
import {
  crossing,
  outsideOutline,
  type PlanSegment,
  planMeeting,
} from '../../geometry/planSegments.ts';
import { type Vec2, vec } from '../../geometry/vector.ts';
import type { Piece } from '../../layout/pieces/piece.ts';
import type { Mm } from '../../units/quantity.ts';
import { baseCapsules, LEG_RADIUS } from '../feet.ts';
import type { Footprint } from '../placed.ts';
import type { BoxedFeet, OnDeck } from './boxed.ts';
import { type Standing, TOUCHING } from './standing.ts';

/**
 * K6 Feet of different stands must not cross on the plan, whatever their heights; the legs of one must keep off the hubs,
 *    discs and pedals of the other. A crossing is as deep as the shorter of the two ends that stand past it.
 * K7 Legs may stand under the flank of a kick as far as they fit. A pedal belongs to what it plays and is not in its way.
 */
export function feetOverlap(first: OnDeck, second: OnDeck): Standing | undefined {
  if (belongTogether(first.piece?.piece, second.piece?.piece)) return undefined;
  let worst: FeetMeeting | undefined;
  const meet: Meet = (found) => {
    if (found.overlap > (worst?.overlap ?? TOUCHING)) worst = found;
  };
  for (const p of first.feet) {
    for (const q of second.feet) {
      if (boundsMeet(p.bounds, q.bounds)) footprintsMeet(p.footprint, q.footprint, meet);
    }
  }
  onPedal(first, second).forEach(meet);
  onPedal(second, first).forEach(meet);
  underKick(first, second).forEach(meet);
  underKick(second, first).forEach(meet);
  if (!worst) return undefined;
  const { place, overlap } = worst;
  const about = [first.id, second.id];
  return { code: 'feet-overlap', about, place: vec(place.x, place.y, 0), overlap };
}

/** Where two feet are in each other's way, and how far; not above 0 where they are not. */
interface FeetMeeting {
  readonly place: Vec2;
  readonly overlap: Mm;
}

/** Told of every meeting: the worst is kept, without a list of thousands where many stands crowd. */
type Meet = (found: FeetMeeting) => void;

function belongTogether(p: Piece | undefined, q: Piece | undefined): boolean {
  if (!p || !q) return false;
  return (p.kind === 'pedal' && p.plays === q.kind) || (q.kind === 'pedal' && q.plays === p.kind);
}

const legsOf = ({ hub, feet }: Footprint): PlanSegment[] => listed(feet, (foot) => [hub, foot]);

function footprintsMeet(p: Footprint, q: Footprint, meet: Meet): void {
  meet({ place: q.hub, overlap: p.hubRadius + q.hubRadius - gap(p.hub, q.hub) });
  for (const foot of p.feet) meet(legOnDisc(p.hub, foot, q));
  for (const foot of q.feet) meet(legOnDisc(q.hub, foot, p));
  for (const foot of p.feet) {
    for (const other of q.feet) {
      if (mayMeet(p.hub, foot, q.hub, other)) meet(legsMeet([p.hub, foot], [q.hub, other]));
    }
  }
}

/** Whether the boxes round two legs touch: most pairs are dismissed so, before they are measured exactly. */
const mayMeet = (a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean =>
  rangesMeet(a.x, b.x, c.x, d.x) && rangesMeet(a.y, b.y, c.y, d.y);

const rangesMeet = (a: Mm, b: Mm, c: Mm, d: Mm): boolean =>
  Math.max(Math.min(a, b), Math.min(c, d)) - Math.min(Math.max(a, b), Math.max(c, d)) <=
  2 * LEG_RADIUS;

function legOnDisc(hub: Vec2, foot: Vec2, disc: Footprint): FeetMeeting {
  const place = nearestOnSegment(hub, foot, disc.hub);
  return { place, overlap: disc.hubRadius + LEG_RADIUS - gap(place, disc.hub) };
}

function legsMeet(p: PlanSegment, q: PlanSegment): FeetMeeting {
  const cross = crossing(p, q);
  if (cross) {
    return { place: cross, overlap: Math.min(gap(cross, p[1]), gap(cross, q[1])) + LEG_RADIUS };
  }
  const { distance, place } = planMeeting(p, q);
  return { place, overlap: 2 * LEG_RADIUS - distance };
}

/** Legs and discs of one on the pedals of the other. */
function onPedal({ feet }: OnDeck, { piece, outlines }: OnDeck): FeetMeeting[] {
  if (piece?.piece.kind !== 'pedal') return [];
  return outlines.flatMap(({ outline, bounds }) =>
    near(feet, bounds).flatMap((footprint) => [
      {
        place: footprint.hub,
        overlap: footprint.hubRadius - outsideOutline(outline, footprint.hub),
      },
      ...legsOf(footprint).flatMap((leg) => legOnOutline(leg, outline)),
    ]),
  );
}

const near = (feet: readonly BoxedFeet[], to: Bounds): readonly Footprint[] =>
  feet.flatMap(({ footprint, bounds }) => (boundsMeet(bounds, to) ? [footprint] : []));

/** A hub inside the outline is found by itself, so a leg that stands on it crosses or touches an edge. */
function legOnOutline(leg: PlanSegment, outline: readonly Vec2[]): FeetMeeting[] {
  return listed(outline, (corner, i) =>
    legOnEdge(leg, [corner, outline[(i + 1) % outline.length] ?? corner]),
  );
}

/** A leg that crosses an edge stands past it by what lies beyond the crossing. */
function legOnEdge(leg: PlanSegment, edge: PlanSegment): FeetMeeting {
  const cross = crossing(leg, edge);
  if (cross) return { place: cross, overlap: gap(cross, leg[1]) + LEG_RADIUS };
  const { distance, place } = planMeeting(leg, edge);
  return { place, overlap: LEG_RADIUS - distance };
}

/** Legs of a piece in the shell of a kick. A mic's legs are measured with the rest of its mount (K2). */
function underKick({ piece, feet }: OnDeck, { piece: other, shells }: OnDeck): FeetMeeting[] {
  if (!piece || piece.piece.kind === 'kick' || other?.piece.kind !== 'kick') return [];
  return shells.flatMap(({ solid: shell, bounds }) =>
    near(feet, bounds)
      .flatMap(baseCapsules)
      .filter((leg) => boundsMeet(boundsOfCapsule(leg), bounds))
      .map((leg) => {
        const { gap: apart, at } = capsuleToCylinder(leg, shell);
        return { place: at, overlap: -apart };
      }),
  );
}
