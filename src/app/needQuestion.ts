import type { Layout } from '../layout/layout.ts';
import { type SignedState, signedState } from '../layout/signedState.ts';
import type { Report } from '../report/report.ts';
import { countByNeed } from '../views/panel/worstFirst.ts';

/** What the worker tells of a layout; null where it could not be analysed. */
export interface NeedAnswer {
  readonly solve: number;
  readonly look: number;
  readonly signOff: SignedState;
}

/** What a row of the list tells of a layout that was analysed. */
export const needIn = (layout: Layout, report: Report): NeedAnswer => ({
  ...countByNeed(report),
  signOff: signedState(layout),
});
