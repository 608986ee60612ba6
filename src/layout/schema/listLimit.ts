import type { z } from 'zod';

/** How many entries a list field may have; no limit when its schema states none. */
export function mostEntries(list: z.ZodArray): number {
  const limits = (list.def.checks ?? []).map((check): unknown =>
    'maximum' in check._zod.def ? check._zod.def.maximum : Infinity,
  );
  return Math.min(Infinity, ...limits.filter((limit) => typeof limit === 'number'));
}
