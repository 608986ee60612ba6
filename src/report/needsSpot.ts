import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';
import { cantStay, type Judgement, type Judging, rowsWorstFirst, whyNot } from './judgement.ts';
import type { ClearanceRow, Finding, Report } from './report.ts';
import { withoutMeetings } from './standingIn.ts';

/** What a mic has to be led away from. A stand that can't hold it is put right at the stand. */
export type LedFrom = Exclude<Judgement, 'clear' | 'not-held'>;

type Row = Pick<ClearanceRow, 'mic' | 'verdict'>;
type Findings = Pick<Report, 'findings'>;

/** What a mic has to be led away from to a clear spot, the worst of it; undefined for one that may stay where it is. */
export function ledFrom(row: Row, report: Findings): LedFrom | undefined {
  if (isInTheWay(row.mic, report)) return 'in-the-way';
  if (row.verdict !== 'clear') return row.verdict;
  return nearPlayer(row.mic, report) ? 'near-player' : undefined;
}

/** Whether a mic has to be led to a clear spot: too near to what moves or to the player, or in a drum, a cymbal, their hardware, another mic or the player. */
export const needsSpot = (row: Row, report: Findings): boolean =>
  ledFrom(row, report) !== undefined;

/**
 * Mics that have to be led to clear spots, in the order in which they are.
 * L1 The worst come first. Those that do nothing but meet other mics come last, the one that was added last first: what was there before may stay
 *    where it is once the other has gone, and is led away only where that one can't be.
 */
export function micsToLead(report: Judging): readonly Id[] {
  const led = rowsWorstFirst(report).filter((row) => needsSpot(row, report));
  const apart = withoutMeetings(report);
  const meetOnly = new Set(led.filter((row) => !needsSpot(row, apart)).map(({ mic }) => mic));
  return [
    ...led.map(({ mic }) => mic).filter((mic) => !meetOnly.has(mic)),
    ...report.clearances
      .map(({ mic }) => mic)
      .filter((mic) => meetOnly.has(mic))
      .toReversed(),
  ];
}

/** Whether a mic is in or too near to head, neck, shoulders or trunk of the player. */
export const isAtPlayer = (mic: Id, report: Findings): boolean =>
  whyNot(mic, report).some(({ code }) => code === 'mic-near-player' || code === 'mic-in-player');

/** The room that a mic has where it is, from what moves and from the player at rest, mm; none at all where it stands in something. */
export function roomOf(
  { mic, clearance }: Pick<ClearanceRow, 'mic' | 'clearance'>,
  report: Findings,
): Mm {
  if (isInTheWay(mic, report)) return Number.NEGATIVE_INFINITY;
  return Math.min(clearance, nearPlayer(mic, report)?.numbers.gap ?? Number.POSITIVE_INFINITY);
}

const isInTheWay = (mic: Id, report: Findings): boolean =>
  cantStay(report).get(mic)?.why === 'in-the-way';

const nearPlayer = (mic: Id, report: Findings): Finding | undefined =>
  whyNot(mic, report).find(({ code }) => code === 'mic-near-player');
