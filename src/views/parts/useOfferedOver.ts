import type { Report } from '../../report/report.ts';
import { useSession } from '../../session/session.ts';

/** While the panel shows what is only offered: the report of the layout as it is. Null while it shows the layout itself. */
export const useOfferedOver = (): Report | null =>
  useSession(({ gesture }) => (gesture?.isOffer ? gesture.beforeReport : null));
