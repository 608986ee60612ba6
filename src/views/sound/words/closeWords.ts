import type { Id } from '../../../layout/fields.ts';
import type { Layout } from '../../../layout/layout.ts';
import type { CloseRow, HearingRow, SoundChange } from '../../../report/sound.ts';
import { type LengthUnit, showLength } from '../../../units/lengthText.ts';
import type { Decibels } from '../../../units/quantity.ts';
import { listed, nameOf } from '../../words/nameOf.ts';
import { NULL_FROM, type PolarPoint } from '../close/polar.ts';
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

/** The isolation in one line: `6.2 dB over all the rest`; inside a drum the least that it is. */
export function isolationWords({ isolation, shell }: Isolated): string {
  if (!Number.isFinite(isolation)) return 'nothing else sounds';
  if (isolation >= 0) {
    return `${shell === null ? '' : 'at least '}${differenceWords(isolation)} over all the rest`;
  }
  return `${shell === null ? '' : 'at most '}${differenceWords(-isolation)} under all the rest`;
}

type Isolated = Pick<CloseRow, 'isolation' | 'shell'>;

/** The isolation as a number: `6.2 dB`, inside a drum `≥ 6.2 dB`. */
export const isolationFigure = ({ isolation, shell }: Isolated): string =>
  `${shell === null || !Number.isFinite(isolation) ? '' : '≥ '}${differenceWords(isolation)}`;

/** Why the isolation of a mic inside a drum is the least that it is. */
export const shellWords = (shell: Id, loss: Decibels, layout: Layout): string =>
  `Inside ${nameOf(layout, shell)}, whose heads and shell are taken to keep ${figure(loss, 0)} dB of the other pieces out (an estimate; change it under Levels and pitches). They come from all sides there, so no turn finds a null. Its own sound builds up inside, which is not counted: the isolation is at least this.`;

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

/** Which pieces sit in a mic's null, drawn with a broken ring. */
export function nullWords(
  points: readonly PolarPoint[],
  { nullAngle }: Pick<HearingRow, 'nullAngle'>,
  layout: Layout,
): string {
  if (nullAngle === null) return 'Its pattern has no null.';
  const inside = points.filter(({ inNull }) => inNull).map(({ piece }) => nameOf(layout, piece));
  return inside.length === 0
    ? 'In its null: nothing.'
    : `In its null (${NULL_FROM} dB or more softer than on its axis): ${listed(inside)}.`;
}
