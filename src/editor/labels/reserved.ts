import type { ScreenPoint, ScreenSize } from '../view/view.ts';
import { type Box, boxAbout, overlap } from './placeLabels.ts';

/** What stands over a drawing, beyond its zoom buttons and its scale bar. */
export interface Furniture {
  /** The choice of drawing stands over its upper edge. */
  readonly head: boolean;
  /** The legend of the marks stands beside its scale bar. */
  readonly legend: boolean;
  /** How high cards stand over the lower edge, px; 0 while there are none. */
  readonly foot: number;
  /** What the drawing's patterns mean stands in its upper left corner, so large, px. */
  readonly legends: ScreenSize;
  /** Nobody can zoom it. */
  readonly isFixed?: true;
}

/** Px, with a little room round each; plan.css has the same sizes. */
const HEAD = 60;
const BUTTONS = { width: 180, height: 64 } as const;
/** With the line over it that tells of names left out. */
const SCALE_BAR = { width: 212, height: 70 } as const;
const LEGEND = { width: 566, height: 40 } as const;
/** From the drawing's corner to the legends, and free round them. */
const ROUND_LEGENDS = 12 + 6;

/** How far up from the lower edge cards of a height stand, over the buttons, px. */
export const footZone = (foot: number): number => BUTTONS.height + foot;

/** Where buttons stand over a drawing: the choice of drawing at its upper edge, zoom and fit in its lower right corner. */
export const controlZones = ({ width, height }: ScreenSize): readonly Box[] => [
  { left: 0, top: 0, width, height: HEAD },
  { ...BUTTONS, left: width - BUTTONS.width, top: height - BUTTONS.height },
];

/** Whether what reaches `reach` px to each side of a spot is whole on a drawing, and off the buttons over it. */
export const standsFree = (at: ScreenPoint, reach: number, size: ScreenSize): boolean =>
  at.x >= reach &&
  at.y >= reach &&
  at.x <= size.width - reach &&
  at.y <= size.height - reach &&
  !controlZones(size).some((zone) => overlap(boxAbout(at, reach), zone) > 0);

/** Where no label may stand, because something stands over the drawing there. */
export function reservedZones(
  { width, height }: ScreenSize,
  { head, legend, foot, legends }: Furniture,
): readonly Box[] {
  const atFoot = (
    left: number,
    size: { readonly width: number; readonly height: number },
  ): Box => ({
    ...size,
    left,
    top: height - size.height,
  });
  return [
    ...(head ? [{ left: 0, top: 0, width, height: HEAD }] : []),
    ...(legends.height > 0
      ? [
          {
            left: 0,
            top: 0,
            width: ROUND_LEGENDS + legends.width,
            height: ROUND_LEGENDS + legends.height,
          },
        ]
      : []),
    atFoot(width - BUTTONS.width, BUTTONS),
    atFoot(0, SCALE_BAR),
    ...(legend ? [atFoot(0, LEGEND)] : []),
    ...(foot > 0 ? [{ left: 0, top: height - footZone(foot), width, height: foot }] : []),
  ];
}
