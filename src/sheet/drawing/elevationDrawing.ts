import { type Vec3, vec } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { figureOf } from '../../report/figure.ts';
import type { Report } from '../../report/report.ts';
import { deckOutline, toKit } from '../../rig/deckFrame.ts';
import type { PlacedPiece } from '../../rig/placed.ts';
import { type Facing, type SeenFrom, type Standpoint, standpointOf } from '../../rig/standpoint.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Mark, Point } from '../mark.ts';
import { type Drawing, extentOf, type LabelWish } from './drawing.ts';
import { kitMarks } from './kitMarks.ts';
import { looks } from './looks.ts';
import type { LabelForms } from './planDrawing.ts';
import { capsuleMark, type Turn } from './solids.ts';

/** Corners of the head's outline. */
const CORNERS = 32;
/** Pieces whose height is read off an elevation. */
const NAMED = ['crash', 'ride', 'splash', 'china', 'hiHat', 'rackTom', 'snare', 'floorTom'];

/** The front or the side, deck level at 0: the deck's edge, the kit with stands and mics, the player faintly (rule E1). */
export function elevationDrawing(
  layout: Layout,
  report: Report,
  view: { readonly facing: Facing; readonly seenFrom: SeenFrom },
  forms: LabelForms,
): Drawing {
  const standpoint = standpointOf(layout.deck, view.facing, view.seenFrom);
  const marks = [
    ...deckMarks(layout, standpoint),
    ...figureMarks(layout, standpoint),
    ...kitMarks(report, standpoint),
  ];
  const named = report.rig.pieces.filter(({ piece }) => NAMED.includes(piece.kind));
  const pieces = named.map((placed) => ({
    at: middleOf(placed, standpoint),
    forms: forms.of(placed.piece.id),
  }));
  const mics = report.rig.mics.map(
    ({ mic, tip }): LabelWish => ({ at: standpoint.point(tip), forms: forms.of(mic.id) }),
  );
  return { marks, labels: [...pieces, ...mics], ...extentOf(marks) };
}

const middleOf = ({ shells }: PlacedPiece, { point }: Turn): Point =>
  point(shells[0]?.centre ?? vec(0, 0, 0));

/** The deck as seen from its edge, with the floor it stands on. */
function deckMarks({ deck }: Layout, { point }: Standpoint): readonly Mark[] {
  const across = deckOutline(deck).map((corner) => {
    const { x, y } = toKit(deck, corner);
    return point(vec(x, y, 0)).x;
  });
  const [left, right] = [Math.min(...across), Math.max(...across)];
  const edge = (y: number): readonly Point[] => [
    { x: left, y },
    { x: right, y },
  ];
  const low = edge(-deck.height).toReversed();
  return [
    {
      kind: 'line',
      layer: 'DECK',
      points: deck.height > 0 ? [...edge(0), ...low] : edge(0),
      closed: deck.height > 0,
      look: looks.deck,
    },
  ];
}

/** The player at rest: for the eye, never to measure. */
function figureMarks(layout: Layout, standpoint: Standpoint): readonly Mark[] {
  const { trunk, shoulders, arms, legs, head } = figureOf(layout.player, layout.pieces);
  const capsules = [trunk, shoulders, ...arms.flat(), ...legs.flatMap((l) => [l.thigh, l.shin])];
  const centre = standpoint.point(head.centre);
  const across = standpoint.direction(vec(head.breadth, 0, 0)).x;
  const along = standpoint.direction(vec(0, head.length, 0)).x;
  const half: Vec3 = vec(Math.hypot(across, along) / 2, head.height / 2, 0);
  const points = Array.from({ length: CORNERS }, (_, i): Point => {
    const angle = (360 * i) / CORNERS;
    return { x: centre.x + half.x * cosDeg(angle), y: centre.y + half.y * sinDeg(angle) };
  });
  const pen = { layer: 'PLAYER', look: looks.figure } as const;
  return [
    ...capsules.map((capsule) => capsuleMark(capsule, standpoint, pen)),
    { kind: 'line', closed: true, points, ...pen },
  ];
}
