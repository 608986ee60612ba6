import type { ScaleLinear } from 'd3-scale';

/** The drawing's own units; at the panel's narrowest one is a pixel. */
export const CHART = { width: 352, height: 250, left: 40, right: 12, top: 16, bottom: 46 } as const;

/** From mm and dB to the drawing. */
export interface ChartScales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}
