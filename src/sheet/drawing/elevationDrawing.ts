import { vec } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { figureOf } from '../../report/figure.ts';
import type { Report } from '../../report/report.ts';
import { deckOutline, toKit } from '../../rig/deckFrame.ts';
import type { PlacedPiece } from '../../rig/placed.ts';
import { type Facing, type SeenFrom, type Standpoint, standpointOf } from '../../rig/standpoint.ts';
import type { Mark, Point } from '../mark.ts';
import { type Drawing, extentOf, type LabelWish } from './drawing.ts';
import { kitMarks } from './kitMarks.ts';
import { looks } from './looks.ts';
import type { LabelForms } from './planDrawing.ts';
import { capsulesMark, type Turn } from './solids.ts';

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

/** The player at rest, trunk and head as one outline each. */
function figureMarks(layout: Layout, standpoint: Standpoint): readonly Mark[] {
  const { trunk, neck, shoulders, head, arms, legs, feet } = figureOf(layout.player, layout.pieces);
  const outlines = [
    trunk,
    [neck],
    [shoulders],
    head,
    ...arms.flat().map((part) => [part]),
    ...legs.flatMap(({ thigh, shin }) => [[thigh], [shin]]),
    ...feet.map(({ solids }) => solids),
  ];
  const pen = { layer: 'PLAYER', look: looks.figure } as const;
  return outlines.map((capsules) => capsulesMark(capsules, standpoint, pen));
}
