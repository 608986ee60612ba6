import type { Stock } from '../layout/cabling.ts';
import type { Mm } from '../units/quantity.ts';

/**
 * R4 Which stock cable serves each run, from those carried: as many runs as possible are served, none short, with the least cable length
 * taken in all; null for a run that is left without. The runs are served from the longest down, each by the shortest cable that is left
 * and reaches. That is best: what reaches a run reaches every shorter one, so the longest has the fewest cables to choose
 * from, and leaving the longer ones of them to the others can only help them.
 */
export function assignStock(needed: readonly Mm[], stock: Stock): readonly (Mm | null)[] {
  const left = stock.map(({ length, count }) => ({ length, count }));
  left.sort((a, b) => a.length - b.length);
  const taken: (Mm | null)[] = needed.map(() => null);
  const longestFirst = needed.map((_, i) => i).sort((a, b) => (needed[b] ?? 0) - (needed[a] ?? 0));
  for (const i of longestFirst) {
    const cable = left.find(({ length, count }) => count > 0 && length >= (needed[i] ?? 0));
    if (!cable) continue;
    cable.count -= 1;
    taken[i] = cable.length;
  }
  return taken;
}
