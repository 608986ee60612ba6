import type { LabelSpot } from './placeLabels.ts';

const DIAGONAL = Math.SQRT1_2;

/** Eight places round a point, `clear` px from it: right, left, below, above, then the corners. */
const round = (clear: number): readonly LabelSpot[] => [
  { x: clear, y: 0, sideX: 1, sideY: 0 },
  { x: -clear, y: 0, sideX: -1, sideY: 0 },
  { x: 0, y: clear, sideX: 0, sideY: 1 },
  { x: 0, y: -clear, sideX: 0, sideY: -1 },
  ...[1, -1].flatMap((x) =>
    [1, -1].map((y) => ({
      x: x * clear * DIAGONAL,
      y: y * clear * DIAGONAL,
      sideX: x,
      sideY: y,
    })),
  ),
];

/** Places round a small thing, near ones first. */
export const roundAbout = (clear: number): readonly LabelSpot[] => [
  ...round(clear),
  ...round(clear + 16),
  ...round(clear + 36),
  ...round(clear + 60),
];

/** Places round a thing that reaches so far from its middle, px: right, below, above, left. */
export const besideBox = (x: number, y: number): readonly LabelSpot[] => [
  { x: x + 8, y: 0, sideX: 1, sideY: 0 },
  { x: 0, y: y + 6, sideX: 0, sideY: 1 },
  { x: 0, y: -y - 6, sideX: 0, sideY: -1 },
  { x: -x - 8, y: 0, sideX: -1, sideY: 0 },
];

/**
 * Places over a broad thing that reaches `reach` px from its middle: the middle, then toward its edges. Outside it a name could
 * be taken for its neighbour's: only what is selected is named there.
 */
export const overBroad = (reach: number, outside: boolean): readonly LabelSpot[] => [
  { x: 0, y: 0, sideX: 0, sideY: 0 },
  { x: 0, y: reach * 0.35, sideX: 0, sideY: 0 },
  { x: 0, y: -reach * 0.35, sideX: 0, sideY: 0 },
  { x: 0, y: reach * 0.65, sideX: 0, sideY: 0 },
  { x: 0, y: -reach * 0.65, sideX: 0, sideY: 0 },
  ...(outside
    ? [
        { x: 0, y: reach + 4, sideX: 0, sideY: 1 },
        { x: 0, y: -reach - 4, sideX: 0, sideY: -1 },
      ]
    : []),
];

/** Places along a line given relative to its first point, px. */
export const alongLine = (
  line: readonly { readonly x: number; readonly y: number }[],
): readonly LabelSpot[] => line.map(({ x, y }) => ({ x, y, sideX: 0, sideY: 0 }));
