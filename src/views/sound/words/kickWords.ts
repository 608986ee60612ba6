import type { Layout } from '../../../layout/layout.ts';
import type { KickRow } from '../../../report/sound.ts';
import { type LengthUnit, showLength } from '../../../units/lengthText.ts';
import { counted, nameOf } from '../../words/nameOf.ts';
import type { ShakerFeed } from '../shaker.ts';

type KickMic = KickRow['mics'][number];

/** Where a kick mic is: `180 mm behind the front head`, `inside`. */
export function kickPlaceWords(
  { place, depth }: KickMic,
  hasPort: boolean,
  unit: LengthUnit,
): string {
  const amount = showLength(Math.abs(depth), unit);
  const opening = hasPort ? 'port' : 'front head';
  switch (place) {
    case 'inside':
      return `Inside, ${amount} behind the ${opening}`;
    case 'front':
      return `Outside, ${amount} before the ${opening}`;
    case 'behind':
      return 'On the beater’s side';
    case 'beside':
      return 'Beside the shell';
  }
}

/** How far it is from where the beater strikes. */
export const batterWords = ({ toBatterHead, toBeater }: KickMic, unit: LengthUnit): string =>
  `${showLength(toBatterHead, unit)} to the batter head, ${showLength(toBeater, unit)} to where the beater strikes.`;

/** How a seat shaker is fed: from a split, not from one more mic; the more so when inputs are short. */
export function shakerWords({ mics, box }: Pick<Layout, 'mics' | 'box'>): string {
  const spare = box.inputs - mics.length;
  const advice =
    'A seat shaker is fed by a split of a kick channel at the desk or a splitter, not by one more mic.';
  if (spare > 0) return `${advice} ${counted(spare, 'input is', 'inputs are')} left on the box.`;
  const short = spare === 0 ? 'no input is left' : `${counted(-spare, 'input')} short`;
  return `The box has ${counted(box.inputs, 'input')} and ${counted(mics.length, 'mic')}: ${short}. ${advice} That keeps the inputs for what must be heard.`;
}

/** How a seat shaker is fed now: `Kick in also feeds Seat shaker, over an isolated leg of its split.` */
export const fedWords = ({ mic, leg }: ShakerFeed, layout: Layout): string =>
  `${nameOf(layout, mic)} also feeds ${leg.to === 'other' ? leg.name : 'its channel'}, over ${leg.connection === 'isolated' ? 'an isolated' : 'a direct'} leg of its split; no input of the box is spent on it. Undo takes it back.`;
