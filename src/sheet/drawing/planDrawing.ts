import { type Vec2, type Vec3, vec } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Report } from '../../report/report.ts';
import { boxCorners } from '../../rig/boxShape.ts';
import { deckOutline, toDeck } from '../../rig/deckFrame.ts';
import type { Rig } from '../../rig/placed.ts';
import { stairsMiddle, stairsOutward } from '../../rig/stairs.ts';
import type { SeenFrom } from '../../rig/standpoint.ts';
import type { Mark, Point } from '../mark.ts';
import { type Drawing, extentOf, type LabelWish } from './drawing.ts';
import { footMarks, kitMarks } from './kitMarks.ts';
import { looks } from './looks.ts';
import type { Turn } from './solids.ts';

/** What things are called on a drawing, by their ids, the fullest form first. */
export interface LabelForms {
  /** Name and height, mark and height, mark; `box` for the box. */
  of(id: string): readonly string[];
  /** Its stand, where that stands apart. */
  standOf(id: string): readonly string[];
}

/** A stand nearer than this to the middle of what it carries needs no label of its own, mm. */
const APART = 60;

/** How deep stairs are drawn, mm. */
const STAIRS_DEPTH = 300;
/** Half the arms of the cross that marks a spot, mm on the deck. */
const CROSS = 25;

/** The plan: deck frame as the player sees it, turned by half a turn as the house sees it. Never a mirror image. */
export function planDrawing(
  layout: Layout,
  report: Report,
  seenFrom: SeenFrom,
  forms: LabelForms,
): Drawing {
  const way = seenFrom === 'house' ? -1 : 1;
  const onPaper = ({ x, y }: Vec2<'deck'>): Point => ({ x: way * x, y: way * y });
  const onDeck = ({ x, y }: Vec2): Point => onPaper(toDeck(layout.deck, { x, y }));
  const origin = toDeck(layout.deck, { x: 0, y: 0 });
  const turned = ({ x, y, z }: Vec3): Vec3 => {
    const at = onDeck({ x, y });
    return vec(at.x, at.y, z);
  };
  const turn: Turn = {
    point: turned,
    direction: (d) => {
      const end = turned(d);
      return vec(end.x - way * origin.x, end.y - way * origin.y, d.z);
    },
  };
  const marks = [
    ...groundMarks(layout, onPaper),
    ...report.runs.map(
      ({ route }): Mark => ({
        kind: 'line',
        layer: 'CABLES',
        points: route.map(onPaper),
        closed: false,
        look: looks.run,
      }),
    ),
    ...[...feetOfPieces(report.rig), ...feetOfMics(report.rig)].flatMap((foot) =>
      footMarks(foot, onDeck),
    ),
    ...kitMarks(report, turn),
    ...spotCrosses(report.rig, onDeck),
  ];
  const box = { at: onPaper(layout.box), forms: forms.of('box') };
  return { marks, labels: [...labelsOf(report.rig, turn, forms), box], ...extentOf(marks) };
}

/** Deck, stairs and box. */
function groundMarks(layout: Layout, onPaper: (p: Vec2<'deck'>) => Point): readonly Mark[] {
  const { deck, box } = layout;
  const stairs = deck.stairs.map((each): Mark => {
    const middle = stairsMiddle(each, deck);
    const out = stairsOutward[each.edge];
    const along = { x: -out.y, y: out.x };
    const corner = (side: number, away: number): Point =>
      onPaper({
        x: middle.x + (along.x * side * each.width) / 2 + out.x * away,
        y: middle.y + (along.y * side * each.width) / 2 + out.y * away,
      });
    const points = [
      corner(-1, 0),
      corner(-1, STAIRS_DEPTH),
      corner(1, STAIRS_DEPTH),
      corner(1, 0),
      corner(1, STAIRS_DEPTH / 2),
      corner(-1, STAIRS_DEPTH / 2),
    ];
    return { kind: 'line', layer: 'DECK', points, closed: false, look: looks.stairs };
  });
  return [
    {
      kind: 'line',
      layer: 'DECK',
      points: deckOutline(deck).map(onPaper),
      closed: true,
      look: looks.deck,
    },
    ...stairs,
    {
      kind: 'line',
      layer: 'BOX',
      points: boxCorners(box).map(onPaper),
      closed: true,
      look: looks.box,
    },
  ];
}

const feetOfPieces = ({ pieces }: Rig) => pieces.flatMap(({ footprints }) => footprints);
const feetOfMics = ({ mics }: Rig) => mics.flatMap(({ stand }) => (stand ? [stand.footprint] : []));

/** A cross where the middle of a mic's stand, round ones too, or of a piece's own stand is marked on the deck, and under the throne. */
function spotCrosses(rig: Rig, onDeck: (p: Vec2) => Point): readonly Mark[] {
  // The feet of a piece that stands on its own legs are not marked one by one.
  const standing = feetOfPieces(rig).filter(({ feet }) => feet.length > 0);
  const hubs = [...standing, ...feetOfMics(rig)].map(({ hub }) => hub);
  return [...hubs, { x: 0, y: 0 }].flatMap((hub) => {
    const { x, y } = onDeck(hub);
    const bar = (dx: number, dy: number): Mark => ({
      kind: 'line',
      layer: 'DIMENSIONS',
      points: [
        { x: x - dx, y: y - dy },
        { x: x + dx, y: y + dy },
      ],
      closed: false,
      look: looks.mark,
    });
    return [bar(CROSS, 0), bar(0, CROSS)];
  });
}

function labelsOf(rig: Rig, turn: Turn, forms: LabelForms): readonly LabelWish[] {
  const pieces = rig.pieces.flatMap(({ piece, shells, footprints }): readonly LabelWish[] => {
    const heel = piece.kind === 'pedal' ? vec(piece.x, piece.y, 0) : vec(0, 0, 0);
    const centre = shells[0]?.centre ?? heel;
    const hub = footprints[0]?.hub ?? centre;
    const isApart = Math.hypot(hub.x - centre.x, hub.y - centre.y) > APART;
    const label = { at: turn.point(centre), forms: forms.of(piece.id) };
    const hasStand = 'support' in piece && piece.support.kind === 'stand';
    return isApart && hasStand
      ? [label, { at: turn.point(vec(hub.x, hub.y, 0)), forms: forms.standOf(piece.id) }]
      : [label];
  });
  const mics = rig.mics.flatMap(({ mic, tip, stand }): readonly LabelWish[] => {
    const label = { at: turn.point(tip), forms: forms.of(mic.id) };
    if (!stand) return [label];
    const { x, y } = stand.footprint.hub;
    return [label, { at: turn.point(vec(x, y, 0)), forms: forms.standOf(mic.id) }];
  });
  return [...pieces, ...mics];
}
