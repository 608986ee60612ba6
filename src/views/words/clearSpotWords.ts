import { findMicClass, MIC_CLASSES, usualMounts } from '../../layout/catalogue/micClasses.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { ClearanceRow } from '../../report/report.ts';
import type { LeftMic } from '../../session/clearing.ts';
import { showClearance, showSpare } from '../../units/clearanceText.ts';
import { showLength } from '../../units/lengthText.ts';
import { choiceOf, mountChoices } from '../mics/mountChoices.ts';
import { choiceWords } from './kindWords.ts';
import { capitalised, counted, inSentence, listed } from './nameOf.ts';
import { verdictWord } from './verdictWords.ts';

/** `Struck, −12 mm`: the verdict with its number. */
export const roomWords = (row: ClearanceRow, layout: Layout): string =>
  `${verdictWord(row.verdict)}, ${showClearance(row.clearance, layout)}`;

/** With less to spare than this a later small change makes it tight again, mm. */
const LITTLE = 10;

/** How much over the margin a spot leaves: `0 mm to spare`; empty where it is not clear or nothing moves near. */
export const spareWords = ({ verdict, clearance }: ClearanceRow, layout: Layout): string =>
  verdict === 'clear' && Number.isFinite(clearance)
    ? `${showSpare(clearance, layout)} to spare`
    : '';

/** The same as a sentence that says when it is little; empty where that is. */
export function spareSentence(row: ClearanceRow, layout: Layout): string {
  const spare = spareWords(row, layout);
  if (spare === '') return '';
  const over = `${spare} over the wanted clearance.`;
  return row.clearance - layout.margin < LITTLE ? `Just clear: ${over}` : capitalised(over);
}

/** The search ends here: a larger change is another set-up, not a clear spot (rule N5). mm. */
const FARTHEST = 500;

/** Mics that stay in the way, by what they are: `1 mic stays struck, 2 mics stay tight`; empty where none does. */
export const stayWords = (mics: readonly Id[], clearances: readonly ClearanceRow[]): string =>
  (['struck', 'tight'] as const)
    .map((verdict) => ({
      verdict,
      count: clearances.filter((row) => row.verdict === verdict && mics.includes(row.mic)).length,
    }))
    .filter(({ count }) => count > 0)
    .map(
      ({ verdict, count }) =>
        `${counted(count, 'mic')} ${count === 1 ? 'stays' : 'stay'} ${verdict}`,
    )
    .join(', ');

/** A search that has come less far has found out nothing worth telling. mm. */
const NEAREST_TOLD = 5;

/**
 * `Searching for a clear spot for Snare mic: nothing within 40 mm…`, how far the search has come once it has come anywhere. A degree of aim
 * counts as 2 mm in it, a mm of the base as 0.3 mm.
 */
export function searchingWords(name: string, beyond: number, { units }: Layout): string {
  const reach = Math.floor(Math.min(beyond, FARTHEST));
  const far = reach < NEAREST_TOLD ? '' : `: nothing within ${showLength(reach, units)}`;
  return `Searching for a clear spot for ${name}${far}…`;
}

/** Why there is no clear spot to show: in short, and what that means. */
export const whyNotWords: Readonly<Record<LeftMic['why'], readonly [string, string]>> = {
  'none-within-reach': [
    'None within reach',
    'No place that this mount reaches is clear by the margin while the mic keeps its aim.',
  ],
  'none-found': [
    'None found in the time',
    'The search had to stop before it knew. A look at every 30 mm and every 30 degrees of the base (15 degrees for a clip) about the mic found no clear spot, but there may be one between, or farther off: move the mic a little and look again.',
  ],
  fixed: ['Nothing to move', 'A plate stays where it lies.'],
};

/** Said of a spot that is not known to be the nearest. */
export const BEST_FOUND = 'The smallest change found; a smaller one may exist.';

/** Ways shown of each kind: a hint, not a catalogue. */
const SHOWN = 3;

/** What can be tried where no clear spot is within reach: other mounts, smaller classes, and what else makes room. */
export function whatToTry(layout: Layout, mic: Mic): readonly string[] {
  const now = choiceOf(mic.mount);
  const mounts = mountChoices(layout, mic).filter((choice) => choice !== now);
  const smaller = smallerClasses(layout, mic);
  return [
    ...(mounts.length === 0
      ? []
      : [`Another mount: ${orWords(mounts.slice(0, SHOWN).map(choiceWords))}.`]),
    ...(smaller.length === 0
      ? []
      : [`A smaller class of mic: ${orWords(smaller.slice(0, SHOWN))}.`]),
    'Move, raise or turn the piece that is in the way.',
    'Agree with the player on a lower stroke or a smaller margin.',
  ];
}

/** Names of the classes that are shorter and can be held as the mic is, the nearest in length first. */
function smallerClasses(layout: Layout, mic: Mic): readonly string[] {
  const own = findMicClass(layout, mic.micClass);
  if (!own) return [];
  const now = choiceOf(mic.mount);
  return [...MIC_CLASSES, ...layout.ownClasses]
    .filter((each) => each.length < own.length && each.diameter <= own.diameter)
    .filter((each) => usualMounts(each).includes(now))
    .toSorted((a, b) => b.length - a.length)
    .map(({ name }) => name);
}

const orWords = (names: readonly string[]): string =>
  listed(names.map(inSentence)).replace(/ and ([^,]*)$/, ' or $1');
