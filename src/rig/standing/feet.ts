import { capsuleToCylinder } from '../../geometry/capsuleContact.ts';
import { gap, nearestOnSegment } from '../../geometry/plan.ts';
import {
  crossing,
  outsideOutline,
  type PlanSegment,
  planMeeting,
} from '../../geometry/planSegments.ts';
import { type Vec2, vec } from '../../geometry/vector.ts';
import type { Id } from '../../layout/fields.ts';
import type { Piece } from '../../layout/pieces/piece.ts';
import type { Mm } from '../../units/quantity.ts';
import { baseCapsules, LEG_RADIUS } from '../feet.ts';
import type { Footprint, PlacedMic, PlacedPiece } from '../placed.ts';
import { type Standing, worstOfEach } from './standing.ts';

/** What of a mic or piece stands on the deck. */
export interface OnDeck {
  readonly id: Id;
  readonly piece: PlacedPiece | undefined;
  readonly footprints: readonly Footprint[];
}

export const micOnDeck = ({ mic, stand }: PlacedMic): OnDeck => ({
  id: mic.id,
  piece: undefined,
  footprints: stand ? [stand.footprint] : [],
});

export const pieceOnDeck = (piece: PlacedPiece): OnDeck => ({
  id: piece.piece.id,
  piece,
  footprints: piece.footprints,
});

/**
 * K6 Feet of different stands must not cross on the plan, whatever their heights; the legs of one must keep off the hubs,
 *    discs and pedals of the other. A crossing is as deep as the shorter of the two ends that stand past it.
 * K7 Legs may stand under the flank of a kick as far as they fit. A pedal belongs to what it plays and is not in its way.
 */
export function feetOverlap(first: OnDeck, second: OnDeck): Standing | undefined {
  if (belongTogether(first.piece?.piece, second.piece?.piece)) return undefined;
  const meetings = [
    ...first.footprints.flatMap((p) => second.footprints.flatMap((q) => footprintsMeet(p, q))),
    ...onPedal(first, second),
    ...onPedal(second, first),
    ...underKick(first, second),
    ...underKick(second, first),
  ];
  const about = [first.id, second.id];
  const [worst] = worstOfEach(
    meetings.map(
      ({ place, overlap }): Standing => ({
        code: 'feet-overlap',
        about,
        place: vec(place.x, place.y, 0),
        overlap,
      }),
    ),
  );
  return worst;
}

/** Where two feet are in each other's way, and how far; not above 0 where they are not. */
interface FeetMeeting {
  readonly place: Vec2;
  readonly overlap: Mm;
}

function belongTogether(p: Piece | undefined, q: Piece | undefined): boolean {
  if (!p || !q) return false;
  return (p.kind === 'pedal' && p.plays === q.kind) || (q.kind === 'pedal' && q.plays === p.kind);
}

const legsOf = ({ hub, feet }: Footprint): PlanSegment[] => feet.map((foot) => [hub, foot]);

function footprintsMeet(p: Footprint, q: Footprint): FeetMeeting[] {
  const [legsP, legsQ] = [legsOf(p), legsOf(q)];
  return [
    {
      place: q.hub,
      overlap: p.hubRadius + q.hubRadius - gap(p.hub, q.hub),
    },
    ...legsP.map((leg) => legOnDisc(leg, q)),
    ...legsQ.map((leg) => legOnDisc(leg, p)),
    ...legsP.flatMap((leg) => legsQ.map((other) => legsMeet(leg, other))),
  ];
}

function legOnDisc([hub, foot]: PlanSegment, disc: Footprint): FeetMeeting {
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
function onPedal({ footprints }: OnDeck, { piece }: OnDeck): FeetMeeting[] {
  if (piece?.piece.kind !== 'pedal') return [];
  return piece.outlines.flatMap((outline) =>
    footprints.flatMap(({ hub, hubRadius, feet }) => [
      { place: hub, overlap: hubRadius - outsideOutline(outline, hub) },
      ...feet.flatMap((foot) => legOnOutline([hub, foot], outline)),
    ]),
  );
}

/** A hub inside the outline is found by itself, so a leg that stands on it crosses or touches an edge. */
function legOnOutline(leg: PlanSegment, outline: readonly Vec2[]): FeetMeeting[] {
  return outline.map((corner, i) =>
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
function underKick({ piece, footprints }: OnDeck, { piece: other }: OnDeck): FeetMeeting[] {
  if (!piece || piece.piece.kind === 'kick' || other?.piece.kind !== 'kick') return [];
  return footprints.flatMap(baseCapsules).flatMap((leg) =>
    other.shells.map((shell) => {
      const { gap: apart, at } = capsuleToCylinder(leg, shell);
      return { place: at, overlap: -apart };
    }),
  );
}
