import type { Layout } from '../layout/layout.ts';
import { type FittingPlace, fitOnDeck, type KitFit } from '../rig/fitOnDeck.ts';
import type { Report } from './report.ts';

/** The names under which screens use how a kit fits its deck. */
export type Fit = KitFit;
export type FitPlace = FittingPlace;

/** Whether the whole kit rests on its deck, and the smallest shift or turn with which it would (rules H1 and H2). */
export const fitOf = ({ deck }: Pick<Layout, 'deck'>, { rig }: Pick<Report, 'rig'>): Fit =>
  fitOnDeck(rig, deck);
