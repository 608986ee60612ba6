import { addMic } from '../../layout/edit/mics.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { createAnalyst } from '../../report/analyse.ts';

/** Places tried at most: enough for every usual one, few enough for one tap. */
const MOST_TRIED = 60;

/** To stand in another's way is as bad as this many lesser faults: a stand that may tip can be weighted down. */
const IN_THE_WAY = 4;

const analyse = createAnalyst();

/**
 * The first of the offered mics that stands clear with nothing found against it, other mics included; where none does, the one with the
 * fewest faults, standing in the way counted first, and then the most clearance. Undefined when nothing is offered.
 */
export function firstClear(layout: Layout, offered: Iterable<Mic>): Mic | undefined {
  let best: { readonly mic: Mic; readonly faults: number; readonly clearance: number } | undefined;
  let tried = 0;
  for (const mic of offered) {
    if (tried >= MOST_TRIED) break;
    tried += 1;
    const judged = judge(layout, mic);
    if (!judged) continue;
    if (judged.faults === 0) return mic;
    const better =
      !best ||
      judged.faults < best.faults ||
      (judged.faults === best.faults && judged.clearance > best.clearance);
    if (better) best = { mic, ...judged };
  }
  return best?.mic;
}

function judge(layout: Layout, mic: Mic) {
  const tried = addMic(layout, mic);
  const placed = tried.mics.at(-1);
  if (tried === layout || !placed) return undefined;
  const report = analyse(tried);
  const row = report.clearances.find((each) => each.mic === placed.id);
  const found = report.findings.filter(
    ({ severity, about, code }) =>
      severity !== 'note' && about.includes(placed.id) && !isAboutCable(code),
  );
  const faults = found.reduce((sum, { severity, about }) => {
    const isInTheWay = severity === 'stop' || about.length > 1;
    return sum + (isInTheWay ? IN_THE_WAY : 1);
  }, 0);
  return { faults, clearance: row?.clearance ?? Number.POSITIVE_INFINITY };
}

/** Cables are judged by their own list: a short stock is no fault of the place. */
const isAboutCable = (code: string): boolean =>
  code.startsWith('run-') || ['stock-missing', 'lane-crossed', 'stairs-crossed'].includes(code);
