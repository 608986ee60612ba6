import type { ScreenPoint } from '../view/view.ts';
import {
  type Box,
  type LabelForm,
  type LabelGround,
  type LabelSpot,
  placeLabels,
} from './placeLabels.ts';

/** Px from a spot to what is written beside it, and how far that may reach past it to the other side. */
const CLEAR = 12;
const ASIDE = 20;

/** Over the spot, then under it, each in the middle or to a side; then beside it. */
const SPOTS: readonly LabelSpot[] = [
  ...[-1, 1].flatMap((sideY) =>
    [0, 1, -1].map((sideX) => ({ x: -ASIDE * sideX, y: CLEAR * sideY, sideX, sideY })),
  ),
  ...[1, -1].map((sideX) => ({ x: CLEAR * sideX, y: 0, sideX, sideY: 0 })),
];

/** Where a text stands whole beside a spot on the screen, out of what stands over the drawing; undefined while the spot is off the screen. */
export function boxBeside(
  at: ScreenPoint,
  form: LabelForm,
  ground: Pick<LabelGround, 'size' | 'reserved'>,
): Box | undefined {
  const wish = { key: '', at, spots: SPOTS, forms: [form], rank: 0, must: true };
  const [label] = placeLabels([wish], { ...ground, covered: [], before: new Map(), tips: [] });
  return label?.box;
}
