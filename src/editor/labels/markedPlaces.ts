import type { Finding, Report } from '../../report/report.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';
import type { ScreenPoint } from '../view/view.ts';
import { type Box, boxAbout } from './placeLabels.ts';

/** The place of a finding that is marked on the plan, px. */
export interface MarkedPlace {
  readonly key: string;
  readonly at: ScreenPoint;
  /** Where the mic is that is wished at the place. */
  readonly from?: ScreenPoint;
}

/** Of the ring round a marked place, px. */
export const MARK_RADIUS = 28;

/** Where findings are marked; those that have no place are not. */
export const markedPlaces = (
  findings: readonly Finding[],
  { rig }: Pick<Report, 'rig'>,
  kitView: KitView,
): readonly MarkedPlace[] =>
  findings.flatMap(({ key, code, about, place }) => {
    if (!place) return [];
    const at = kitToScreen(kitView, place);
    const wished = code === 'mic-move-wished' && rig.mics.find(({ mic }) => mic.id === about[0]);
    return [wished ? { key, at, from: kitToScreen(kitView, wished.tip) } : { key, at }];
  });

/** What the rings cover: labels keep out of them where they can. */
export const markBoxes = (marked: readonly MarkedPlace[]): readonly Box[] =>
  marked.map(({ at }) => boxAbout(at, MARK_RADIUS));
