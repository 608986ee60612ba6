import type { Layout } from '../layout/layout.ts';
import { signedState } from '../layout/signedState.ts';
import type { Report } from '../report/report.ts';
import type { RowNeed } from '../session/rowNeeds.ts';
import { countByNeed } from '../views/panel/worstFirst.ts';

/** What the worker tells of a layout; null where it could not be analysed. */
export type NeedAnswer = Omit<RowNeed, 'changedAt'>;

/** What a row of the list tells of a layout that was analysed. */
export const needIn = (layout: Layout, report: Report): NeedAnswer => ({
  ...countByNeed(report),
  signOff: signedState(layout),
});
