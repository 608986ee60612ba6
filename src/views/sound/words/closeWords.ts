import type { Layout } from '../../../layout/layout.ts';
import type { CloseRow, SoundChange } from '../../../report/sound.ts';
import { type LengthUnit, showLength } from '../../../units/lengthText.ts';
import { nameOf } from '../../words/nameOf.ts';
import { changeWords, differenceWords, figure, levelWords } from './amounts.ts';

type Zone = NonNullable<CloseRow['aim']>['zone'];

const zones: Readonly<Record<Zone, string>> = {
  centre: 'near the centre: most attack',
  between: 'between centre and edge: attack and ring both',
  edge: 'near the edge: more ring and overtones, less attack',
  beside: 'beside the head: it looks past what it is for',
};

/** Where a mic aims: `38 mm from the centre`; what that usually does is common practice. */
export function aimWords({ aim }: Pick<CloseRow, 'aim'>, unit: LengthUnit): string {
  if (!aim) return 'It does not look at the head.';
  return `${showLength(aim.fromCentre, unit)} from the centre, ${zones[aim.zone]} (common practice).`;
}

/** `Ride 8.1 dB below it, …`: what spills most, against what it is for. */
export const spillWords = (
  { worst, level }: Pick<CloseRow, 'worst' | 'level'>,
  layout: Layout,
): string =>
  worst.length === 0
    ? 'Nothing else sounds.'
    : worst
        .map((hearing) => `${nameOf(layout, hearing.piece)} ${belowWords(level - hearing.level)}`)
        .join(', ');

/** `8.1 dB below`, `1.2 dB above`. */
export const belowWords = (under: number): string =>
  under >= 0 ? `${differenceWords(under)} below` : `${differenceWords(-under)} above`;

/** The isolation in one line: `6.2 dB over all the rest`. */
export function isolationWords({ isolation }: Pick<CloseRow, 'isolation'>): string {
  if (!Number.isFinite(isolation)) return 'nothing else sounds';
  return isolation >= 0
    ? `${differenceWords(isolation)} over all the rest`
    : `${differenceWords(-isolation)} under all the rest`;
}

/** `Since its last change: own level +1.2 dB, isolation −0.4 dB.` */
export function sinceWords(change: SoundChange, unit: LengthUnit): string {
  const aim =
    change.aim === null || change.aim < 1 ? '' : `, aim moved ${showLength(change.aim, unit)}`;
  return `Since its last change: own level ${changeWords(change.level)}, isolation ${changeWords(change.isolation)}, bass boost ${changeWords(change.proximity)}${aim}.`;
}

/** `Turn 12° so that Ride falls into the null`. */
export function turnWords(turn: NonNullable<CloseRow['turn']>, layout: Layout): string {
  const where = turn.inNull ? 'falls into the null' : 'comes nearer to the null';
  return `Turn ${figure(turn.by, 0)}° so that ${nameOf(layout, turn.neighbour)} ${where}`;
}

/** What a suggested turn does. */
export const turnGainWords = (
  turn: NonNullable<CloseRow['turn']>,
  { source }: Pick<CloseRow, 'source'>,
  layout: Layout,
): string =>
  `${nameOf(layout, turn.neighbour)} ${changeWords(turn.neighbourLevel)}, ${nameOf(layout, source)} ${changeWords(turn.level)}, isolation ${changeWords(turn.isolation)}.`;

const moves: Readonly<Record<CloseRow['trials'][number]['move'], string>> = {
  nearer: '20 mm nearer',
  farther: '20 mm farther',
  up: '20 mm up',
  towardCentre: '20 mm toward the centre',
  aimAtCentre: 'Aimed at the centre',
};

/** A move that was tried out. */
export const moveWords = (move: CloseRow['trials'][number]['move']): string => moves[move];

/** The line of a close mic in the list. */
export const closeLine = (row: CloseRow, layout: Layout): string =>
  `${nameOf(layout, row.source)} at ${levelWords(row.level)}, ${isolationWords(row)}`;

/** The closed part's line: the mic with the least isolation. */
export function closeSummary(rows: readonly CloseRow[], layout: Layout): string {
  const [least] = rows.toSorted((p, q) => p.isolation - q.isolation);
  if (!least) return 'No close mics yet.';
  return `Least isolated: ${nameOf(layout, least.mic)}, ${isolationWords(least)}`;
}
