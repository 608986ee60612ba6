import type { Layout } from '../../../layout/layout.ts';
import type { MovedSound } from '../../../report/sound.ts';
import type { Decibels } from '../../../units/quantity.ts';
import { nameOf } from '../../words/nameOf.ts';
import { differenceWords } from './amounts.ts';

/** Smaller changes are written as 0.0 dB. */
const TOLD: Decibels = 0.05;

/** What another place costs in sound: `Snare: 1.2 dB quieter, isolation 0.8 dB less`; many a name ends in a number. */
export function movedWords(
  { piece, level, isolation, isOneOfSeveral }: MovedSound,
  layout: Layout,
): string {
  const name = nameOf(layout, piece);
  const most = isOneOfSeveral ? `, the largest change of what it hears` : '';
  const own = isTold(level)
    ? `${name}: ${differenceWords(Math.abs(level))} ${level > 0 ? 'louder' : 'quieter'}${most}`
    : isOneOfSeveral
      ? 'all that it hears as loud as now'
      : `${name}: as loud as now`;
  if (isolation === null) return own;
  const rest = isTold(isolation)
    ? `${differenceWords(Math.abs(isolation))} ${isolation > 0 ? 'more' : 'less'}`
    : 'the same';
  return `${own}, isolation ${rest}`;
}

const isTold = (change: Decibels): boolean => Number.isFinite(change) && Math.abs(change) >= TOLD;
