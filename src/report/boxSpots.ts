import { type BoxSpot, type BoxSpots, boxSpots, type SpotProgress } from '../cabling/boxSpots.ts';
import type { Layout } from '../layout/layout.ts';
import { buildRig } from '../rig/buildRig.ts';

/** The names under which screens use a search for box spots. */
export type FoundSpots = BoxSpots;
export type FoundSpot = BoxSpot;

/** The best spots for the box of a layout, spot by spot; who wants to stop stops asking. */
export const findBoxSpots = (layout: Layout): Generator<SpotProgress, FoundSpots, void> =>
  boxSpots(layout, buildRig(layout));
