import { findMicClass, MIC_CLASSES, usualMounts } from '../../layout/catalogue/micClasses.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { Judging } from '../../report/judgement.ts';
import { isAtPlayer, type LedFrom, roomOf } from '../../report/needsSpot.ts';
import type { ClearanceRow } from '../../report/report.ts';
import type { LeftMic } from '../../session/clearing.ts';
import { showMargin, showSpare } from '../../units/clearanceText.ts';
import { roundedDown, showLength } from '../../units/lengthText.ts';
import { choiceOf, mountChoices } from '../mics/mountChoices.ts';
import { choiceWords } from './kindWords.ts';
import { capitalised, counted, inSentence, listed, nameOf } from './nameOf.ts';
import { figureWords } from './troubleWords.ts';
import { countsToLead, judgementWord, saidVerdict } from './verdictWords.ts';

/** `Struck, −12 mm`, `In the way, in Rack tom, 34 mm deep`: what is said of it with its figure. */
export const roomWords = (
  row: ClearanceRow,
  { layout, report }: { readonly layout: Layout; readonly report: Judging },
): string => `${saidVerdict(row, report).word}, ${figureWords(row, report, layout)}`;

/** With less to spare than this a later small change makes it tight again, mm. */
const LITTLE = 10;

/**
 * How much over the margin a spot leaves: `0 mm to spare`, and of a mic that is led away from the player `at least 50 mm from the player`, since its
 * room from what moves says nothing of that; empty where it is not clear or nothing is near.
 */
export function spareWords(row: ClearanceRow, layout: Layout, before: Judging): string {
  return offPlayer(row, layout, before) || overMargin(row, layout);
}

const overMargin = ({ verdict, clearance }: ClearanceRow, layout: Layout): string =>
  verdict === 'clear' && Number.isFinite(clearance)
    ? `${showSpare(clearance, layout)} to spare`
    : '';

/** What is known of a clear mic that is led away from the player (Q1); empty for any other. */
const offPlayer = (row: ClearanceRow, layout: Layout, before: Judging): string =>
  row.verdict === 'clear' && isAtPlayer(row.mic, before)
    ? `at least ${showMargin(layout)} from the player`
    : '';

/** The same as a sentence that says when it is little; empty where that is. */
export function spareSentence(row: ClearanceRow, layout: Layout, before: Judging): string {
  const spare = overMargin(row, layout);
  const off = offPlayer(row, layout, before);
  if (off !== '') {
    const moving = spare === '' ? '' : `; from what moves ${spare}`;
    return `${capitalised(off)}${moving}.`;
  }
  if (spare === '') return '';
  const over = `${spare} over the wanted clearance.`;
  return row.clearance - layout.margin < LITTLE ? `Just clear: ${over}` : capitalised(over);
}

/** The search ends here: a larger change is another set-up, not a clear spot (rule N5). mm. */
const FARTHEST = 500;

/** Mics that stay in the way, by what is said of them: `1 mic stays struck, 2 mics stay tight, 1 mic still won't hold`; empty where none does. */
export function stayWords(mics: readonly Id[], report: Judging): string {
  const clearances = report.clearances.filter(({ mic }) => mics.includes(mic));
  return countsToLead({ clearances }, report)
    .map(({ judgement, count }) => {
      const stay = judgement === 'not-held' ? 'still' : count === 1 ? 'stays' : 'stay';
      return `${counted(count, 'mic')} ${stay} ${judgementWord(judgement).toLowerCase()}`;
    })
    .join(', ');
}

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

/** `Looking for clear spots: 3 of 11 mics done, 2 with a spot. Now Snare mic…`, or `Now Snare mic again…` */
export function inTurnWords(
  done: number,
  of: number,
  {
    now,
    isAgain,
    found,
  }: { readonly now: string; readonly isAgain: boolean; readonly found: number },
): string {
  const spots = done === 0 ? '' : `, ${found === 0 ? 'none' : found} with a spot`;
  return `Looking for clear spots: ${done} of ${counted(of, 'mic')} done${spots}. ${now === '' ? 'Summing up' : `Now ${now}${isAgain ? ' again' : ''}`}…`;
}

/** Why there is no clear spot to show: in short, and what that means. */
export const whyNotWords: Readonly<Record<LeftMic['why'], readonly [string, string]>> = {
  'none-within-reach': [
    'None within reach',
    'No place that this mount reaches keeps the wanted clearance from what moves and from the player while the mic keeps its aim.',
  ],
  'none-found': [
    'None found yet',
    'Time ran out. Places every 30 mm round the mic were looked at; one may lie between, or farther off. Move the mic a little and look again.',
  ],
  fixed: ['Nothing to move', 'A plate stays where it lies.'],
  'not-looked': ['Not looked for', 'The search was stopped before.'],
  'not-again': [
    'Not looked for again',
    'Another mic has made room since, and the search was stopped before.',
  ],
};

/** What would be room enough for a mic that has no clear spot: the wanted clearance with which it has one; empty where nothing was seen. */
export function enoughWords(
  { most }: Pick<LeftMic, 'most'>,
  now: Pick<ClearanceRow, 'mic' | 'clearance'> | undefined,
  { layout: { units }, report }: { readonly layout: Layout; readonly report: Judging },
): string {
  if (most === undefined) return '';
  if (now && most <= roomOf(now, report)) return 'No place seen within its reach has more room.';
  const room = roundedDown(most, units);
  if (room <= 0) return 'No place seen within its reach keeps off what moves and the player.';
  const shown = showLength(room, units);
  return `The most room seen within its reach is ${shown}: with a wanted clearance of ${shown} or less (in Player) it has a clear spot.`;
}

/** The next step for a mic that stays in the way, the one thing most likely to help first. */
export function nextForLeft({ why }: Pick<LeftMic, 'why'>, { mount }: Mic): string {
  if (why === 'not-looked' || why === 'not-again') return 'Look again for it alone.';
  if (mount.kind === 'stand') return 'Move its stand, or move what is in the way.';
  if (mount.kind === 'clip') return 'Hold it by a stand, or move what is in the way.';
  return 'Lay it elsewhere, or move what is in the way.';
}

/** Said of a spot that is not known to be the nearest. */
export const BEST_FOUND = 'The smallest change found; a smaller one may exist.';

/** The same, once for all of those that would move; empty where each is known to be the nearest. */
export function bestFoundWords(
  moved: readonly Id[],
  unproven: readonly Id[],
  layout: Layout,
): string {
  const of = moved.filter((mic) => unproven.includes(mic));
  if (of.length === 0) return '';
  const all = of.length === moved.length;
  const names = all ? '' : `${listed(of.map((mic) => nameOf(layout, mic)))}: `;
  const what =
    of.length === 1
      ? 'the smallest change found; a smaller one may exist.'
      : 'the smallest changes found; smaller ones may exist.';
  return capitalised(`${names}${what}`);
}

/** Ways shown of each kind: a hint, not a catalogue. */
const SHOWN = 3;

/** What can be tried where no clear spot is within reach: other mounts, smaller classes, and what else makes room. */
export function whatToTry(layout: Layout, mic: Mic, from?: LedFrom): readonly string[] {
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
    ...(from === 'near-player' && mic.mount.kind === 'stand'
      ? ['Its base on the other side, so that nothing of it goes past the player.']
      : []),
    'Move, raise or turn the piece that is in the way.',
    from === 'near-player'
      ? 'Agree with the player on a smaller margin.'
      : 'Agree with the player on a lower stroke or a smaller margin.',
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
