import type { PlanMark, PlanMarks } from '../../session/patchView.ts';
import { kitToScreen } from '../view/kitView.ts';
import { formOf, type LabelLook, type Lettering } from './lettering.ts';
import { onScreen } from './placeLabels.ts';
import { roundAbout } from './spots.ts';
import { type Lettered, RANK } from './wishes.ts';

/** The marks of what is looked at, at the front of their mics and the middle of their pieces. */
export const markLabels = (
  lettered: Lettered,
  { marks }: Pick<PlanMarks, 'marks'>,
): readonly Lettering[] => marks.flatMap((mark) => markLabel(lettered, mark));

function markLabel(
  { layout, report, kitView, measure }: Lettered,
  { about, sign, texts }: PlanMark,
): readonly Lettering[] {
  const mic = report.rig.mics.find((placed) => placed.mic.id === about);
  const piece = layout.pieces.find(({ id }) => id === about);
  const spot = mic?.tip ?? (piece?.kind === 'throne' ? { x: 0, y: 0 } : piece);
  if (!spot) return [];
  const look: LabelLook = { kind: 'mark', sign };
  const at = kitToScreen(kitView, spot);
  const forms = texts.map((text) => formOf(text, look, measure));
  const must = onScreen(at, kitView.view.size);
  return [
    {
      look,
      wish: {
        key: `mark ${about}`,
        at,
        spots: roundAbout(12),
        forms,
        rank: RANK.struck,
        must,
        ...(mic && { points: true }),
      },
    },
  ];
}
