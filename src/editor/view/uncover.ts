import type { Vec2 } from '../../geometry/vector.ts';
import { footZone } from '../labels/reserved.ts';
import { toScreen, type View } from './view.ts';

/** Free px between what is uncovered and the cards below it. */
export const OVER_CARDS = 24;

/** How far up the drawing must move, px, so that none of some spots on the screen is under cards of this height over its lower edge. */
export function covering(view: View, spots: readonly Vec2<'deck'>[], foot: number): number {
  const { height } = view.size;
  const most = height - footZone(foot) - OVER_CARDS;
  const seen = spots.map((spot) => toScreen(view, spot).y).filter((y) => y <= height);
  return Math.max(0, ...seen.map((y) => y - most));
}
