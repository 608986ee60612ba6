import { STAND_CLASSES } from '../../layout/catalogue/standClasses.ts';
import type { StandClass } from '../../layout/mics/mount.ts';
import type { StandFacts } from '../../report/standFacts.ts';
import { standWords } from './kindWords.ts';
import { inSentence } from './nameOf.ts';

/** Beyond this the number says no more than that it is firm. */
const PLENTY = 20;

interface StandWords {
  readonly firm: string;
  readonly smaller?: string;
}

/** A tipping factor, rounded down: nobody reads 1.0 of a stand that falls. */
export const tippingText = (factor: number): string => (Math.floor(factor * 10) / 10).toFixed(1);

/** How firmly a stand stands and whether a smaller one would do. */
export function standFactsWords({ factor, smallest }: StandFacts, now: StandClass): StandWords {
  const firm =
    factor > PLENTY
      ? 'Firm: boom and mic hang over the base.'
      : `Tipping: the base holds ${tippingText(factor)} times the pull of boom and mic; 1.5 is wanted.`;
  const order = STAND_CLASSES.map(({ standClass }) => standClass);
  const smaller = smallest !== undefined && order.indexOf(smallest) < order.indexOf(now);
  if (!smaller) return { firm };
  return { firm, smaller: `A smaller stand would reach: ${inSentence(standWords(smallest))}.` };
}
