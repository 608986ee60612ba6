import type { Layout } from '../../../layout/layout.ts';
import type { HighPassRow, PairRow } from '../../../report/sound.ts';
import { type LengthUnit, showLength } from '../../../units/lengthText.ts';
import { nameOf, unbroken } from '../../words/nameOf.ts';
import { differenceWords, figure, hertzWords } from './amounts.ts';

/** Said once: what the rule is worth. */
export const RULE_WORDS =
  'The 3:1 rule asks that two open mics stand three times as far apart as each is from its source. At equal gain that leaves 6 dB from peak to dip, not 1 dB; 1 dB needs 24.8 dB between the levels.';

/** `Snare top and Hi-hat`. */
export const pairTitle = ({ mic, other }: PairRow, layout: Layout): string =>
  `${nameOf(layout, mic)} and ${nameOf(layout, other)}`;

/** A line for the distances of a pair, one for what they come to, and one where the source is meant for both. */
export const pairWords = (row: PairRow, layout: Layout, unit: LengthUnit): readonly string[] =>
  [
    `${nameOf(layout, row.source)}: ${showLength(row.near, unit)} and ${showLength(row.far, unit)} away`,
    `Mics ${showLength(row.spacing, unit)} apart: ${ratioWords(row.ratio)}`,
    `${differenceWords(Math.abs(row.levelDifference))} between their levels`,
    ...(row.shared ? ['Both are there for it: meant, but time it'] : []),
  ].map(unbroken);

/** `4.2:1`, whether it keeps the rule. */
export const ratioWords = (ratio: number): string =>
  `${figure(ratio, 1)}:1, ${ratio >= 3 ? 'keeps 3:1' : 'short of 3:1'}`;

/** The number of a pair: peak to dip. */
export const harmWords = ({ ripple }: Pick<PairRow, 'ripple'>): string =>
  Number.isFinite(ripple.peakToDip) ? differenceWords(ripple.peakToDip) : 'full';

/** The closed part’s line: the most harmful pair that is not meant. */
export function pairsSummary(rows: readonly PairRow[], layout: Layout): string {
  const worst = rows.find(({ shared }) => !shared);
  if (!worst)
    return rows.length === 0 ? 'Needs two open mics.' : 'No pair shares a source unmeant.';
  return `Worst: ${pairTitle(worst, layout)}, ${harmWords(worst)} peak to dip`;
}

const reasons: Readonly<Record<HighPassRow['reasons'][number], string>> = {
  stageRumble: 'keeps stage rumble out below what the drum plays',
  lowSpill: 'takes spill of kick and bass',
  denseMix: 'leaves room for kick and bass in a dense mix',
  overheadsForCymbals: 'drums come from their own mics, overheads give cymbals',
  overheadsCarryKit: 'overheads carry the whole kit',
  keepBody: 'soft playing keeps its body',
  keepFundamental: 'stays under the drum’s own fundamental',
};

/** `80 to 120 Hz`. */
export const rangeWords = ({ low, high }: Pick<HighPassRow, 'low' | 'high'>): string =>
  low === high || Math.round(low) === Math.round(high)
    ? hertzWords(high)
    : `${figure(low, 0)} to ${hertzWords(high)}`;

/** Why to start there. */
export const reasonWords = ({ reasons: why }: Pick<HighPassRow, 'reasons'>): string =>
  why.map((reason) => reasons[reason]).join('; ');
