import type { PlacedPiece } from '../../rig/placed.ts';
import type { Standpoint } from '../elevation/standpoint.ts';
import { kitToScreen } from '../view/kitView.ts';
import { elevationTitle } from '../words.ts';
import { formOf, type LabelLook, type Lettering } from './lettering.ts';
import { overBroad } from './spots.ts';
import { type Lettered, micLabels, RANK } from './wishes.ts';

/** Every label of an elevation; the report is the turned one. An elevation that stands alone has the legend too. */
export const elevationLabels = (
  lettered: Lettered,
  standpoint: Standpoint,
  alone: boolean,
): readonly Lettering[] => [
  title(lettered, standpoint, alone),
  ...micLabels(lettered),
  ...lettered.report.rig.pieces.flatMap((placed) => pieceLabel(lettered, placed)),
];

/** How high over the lower edge the title stands, px: over the legend, or in its place, left of the buttons. */
const OVER_LEGEND = 48;
const IN_PLACE = 20;
const BUTTONS = 72;

/** From where it is looked: always to be seen. */
function title({ kitView, measure }: Lettered, standpoint: Standpoint, alone: boolean): Lettering {
  const look: LabelLook = { kind: 'side' };
  const { width, height } = kitView.view.size;
  return {
    look,
    wish: {
      key: 'title',
      at: alone
        ? { x: width / 2, y: height - OVER_LEGEND }
        : { x: width - BUTTONS, y: height - IN_PLACE },
      spots: [{ x: 0, y: 0, sideX: alone ? 0 : -1, sideY: 0 }],
      forms: elevationTitle(standpoint).map((text) => formOf(text, look, measure)),
      rank: RANK.selected - 1,
      must: true,
    },
  };
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
  const seen = halfHeight * Math.abs(axis.y) + radius * Math.hypot(axis.x, axis.z);
  return [
    {
      look,
      wish: {
        key: `piece ${piece.id}`,
        at: kitToScreen(kitView, shell.centre),
        spots: overBroad(seen * kitView.view.scale, chosen),
        forms: [formOf(piece.name, look, measure)],
        rank: chosen ? RANK.selected : RANK.piece,
        must: chosen,
      },
    },
  ];
}
