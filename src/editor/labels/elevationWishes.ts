import type { PlacedPiece } from '../../rig/placed.ts';
import type { Standpoint } from '../../rig/standpoint.ts';
import { kitToScreen } from '../view/kitView.ts';
import type { ScreenPoint, ScreenSize } from '../view/view.ts';
import { elevationTitle } from '../words.ts';
import { formOf, type LabelLook, type Lettering } from './lettering.ts';
import { overBroad, roundAbout } from './spots.ts';
import { type Lettered, micLabels, nameForms, RANK } from './wishes.ts';

/**
 * Every label of an elevation; the report is the turned one. An elevation that stands alone has the legend too. Beside the plan it is
 * small, and the plan has every clear mic's number: only what is struck, tight or selected is lettered again. In an elevation things
 * stand one behind the other: a clear mic's number stands close by it or not at all, and what it names is never guessed.
 */
export const elevationLabels = (
  lettered: Lettered,
  standpoint: Standpoint,
  alone: boolean,
): readonly Lettering[] => [
  title(lettered, standpoint, alone),
  ...micLabels(lettered).flatMap((label) => {
    if (label.wish.rank < RANK.clear) return [label];
    return alone ? [closeBy(label)] : [];
  }),
  ...lettered.report.rig.pieces.flatMap((placed) => pieceLabel(lettered, placed)),
];

/** Px from a mic to a clear one's number: no line leads to it, unless it is still nearer to another mic (rule L8). */
const CLOSE = roundAbout(12).slice(0, 8);

const closeBy = ({ look, wish }: Lettering): Lettering => ({
  look,
  wish: { ...wish, spots: CLOSE, forms: wish.forms.filter(({ text }) => text !== ''), must: false },
});

/** How high over the lower edge the title stands, px: over the legend; in its place; or, in a narrow drawing, over the buttons. */
const OVER_LEGEND = 52;
const IN_PLACE = 26;
const OVER_BUTTONS = 80;
/** The room that the buttons take at the right, and how wide a drawing must be for the title beside them, px. */
const BUTTONS = 188;
const WIDE = 620;

/** From where it is looked: always to be seen. */
function title({ kitView, measure }: Lettered, standpoint: Standpoint, alone: boolean): Lettering {
  const look: LabelLook = { kind: 'side' };
  const { width, height } = kitView.view.size;
  return {
    look,
    wish: {
      key: 'title',
      at: titlePlace({ width, height }, alone),
      spots: [{ x: 0, y: 0, sideX: alone ? 0 : -1, sideY: 0 }],
      forms: elevationTitle(standpoint).map((text) => formOf(text, look, measure)),
      rank: RANK.selected - 1,
      must: true,
    },
  };
}

function titlePlace({ width, height }: ScreenSize, alone: boolean): ScreenPoint {
  if (alone) return { x: width / 2, y: height - OVER_LEGEND };
  if (width >= WIDE) return { x: width - BUTTONS, y: height - IN_PLACE };
  return { x: width - 12, y: height - OVER_BUTTONS };
}

function pieceLabel(
  { selection, kitView, measure }: Lettered,
  { piece, shells }: PlacedPiece,
): readonly Lettering[] {
  const [shell] = shells;
  const chosen = selection?.kind === 'piece' && selection.id === piece.id;
  if (!shell || (piece.kind === 'throne' && !chosen)) return [];
  const look: LabelLook = { kind: 'name', strong: chosen };
  const { axis, halfHeight, radius } = shell;
  const { scale } = kitView.view;
  const high = halfHeight * Math.abs(axis.y) + radius * Math.hypot(axis.x, axis.z);
  const wide = halfHeight * Math.abs(axis.x) + radius * Math.hypot(axis.y, axis.z);
  return [
    {
      look,
      wish: {
        key: `piece ${piece.id}`,
        at: kitToScreen(kitView, shell.centre),
        spots: overBroad(high * scale, chosen),
        forms: nameForms({ name: piece.name, look, measure }, chosen ? null : 2 * wide * scale),
        rank: chosen ? RANK.selected : RANK.piece,
        must: chosen,
      },
    },
  ];
}
