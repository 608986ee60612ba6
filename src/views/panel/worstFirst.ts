import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { standsInSwing } from '../../report/findings/standsInSwing.ts';
import type { ClearanceRow, Finding, Report } from '../../report/report.ts';
import { shownVerdict } from '../../report/standingIn.ts';
import type { Selection } from '../../session/selection.ts';
import type { Verdict } from '../words/verdictWords.ts';

/** One line of the findings list: a mic with its clearance, or a finding about anything else. */
export type FindingRow =
  | {
      readonly kind: 'mic';
      readonly key: string;
      readonly row: ClearanceRow;
      readonly finding: Finding | undefined;
    }
  | { readonly kind: 'finding'; readonly key: string; readonly finding: Finding };

type ThingSelection = Extract<Selection, { kind: 'mic' | 'piece' }>;

/**
 * Every mic once and every other finding once, the worst first: struck mics, what stops the show, tight mics, warnings,
 * notes, clear mics. Mics of one verdict stand by their clearance, findings in the report's order.
 */
export function worstFirst(report: Report): readonly FindingRow[] {
  return linesOf(report)
    .map((row, index) => ({ row, rank: rankOf(row), size: sizeOf(row), index }))
    .sort((a, b) => a.rank - b.rank || a.size - b.size || a.index - b.index)
    .map(({ row }) => row);
}

/** How many lines of the list must be solved (struck mics, and whatever else stops the show) and should be looked at (tight mics and warnings). */
export function countByNeed(report: Report): { readonly solve: number; readonly look: number } {
  let [solve, look] = [0, 0];
  for (const line of linesOf(report)) {
    const verdict = line.kind === 'mic' ? line.row.verdict : 'clear';
    if (line.finding?.severity === 'stop' || verdict === 'struck') solve += 1;
    else if (line.finding?.severity === 'warn' || verdict === 'tight') look += 1;
  }
  return { solve, look };
}

/** The lines in no order: findings about a mic's room go with its clearance. */
function linesOf(report: Report): readonly FindingRow[] {
  const aboutMic = new Map<string, Finding>();
  const swung = report.clearances.filter(({ nearest }) => nearest?.movement.kind === 'swing');
  const rows: FindingRow[] = [];
  for (const finding of report.findings) {
    const mic = finding.about[0];
    const isOfRow = isClearance(finding) || swung.some((row) => standsInSwing(row, finding));
    if (isOfRow && mic !== undefined && !aboutMic.has(mic)) aboutMic.set(mic, finding);
    else rows.push({ kind: 'finding', key: finding.key, finding });
  }
  for (const row of report.clearances) {
    const finding = aboutMic.get(row.mic);
    rows.push({ kind: 'mic', key: finding?.key ?? `mic:${row.mic}`, row, finding });
  }
  return rows;
}

/** Findings that the list shows: thousands of lines would take seconds to open, and nobody reads them. */
export const MOST_LISTED = 200;

/** The lines to show of all: every mic, the worst findings and the one that is pointed at; and how many more there are. */
export function listed(
  rows: readonly FindingRow[],
  shownKey: string | null,
): { readonly shown: readonly FindingRow[]; readonly more: number } {
  let findings = 0;
  const shown = rows.filter((row) => {
    if (row.kind === 'mic') return true;
    findings += 1;
    return findings <= MOST_LISTED || row.key === shownKey;
  });
  return { shown, more: rows.length - shown.length };
}

/**
 * Lines in the order that they had in another report, new ones last: what is only shown does not send its own line away, nor the one that is open, though
 * it would be put right.
 */
export function inOrder(
  rows: readonly FindingRow[],
  before: Report | null,
  shownKey: string | null = null,
): readonly FindingRow[] {
  if (before === null) return rows;
  const old = worstFirst(before);
  const places = new Map(old.map((row, index) => [idOf(row), index]));
  const place = (row: FindingRow): number => places.get(idOf(row)) ?? places.size;
  const isThere = rows.some(({ key }) => key === shownKey);
  const open = isThere ? [] : old.filter((row) => row.kind === 'finding' && row.key === shownKey);
  return [...rows, ...open].toSorted((a, b) => place(a) - place(b));
}

/** What a line is about, whatever its verdict. */
const idOf = (row: FindingRow): string => (row.kind === 'mic' ? `mic:${row.row.mic}` : row.key);

/** Whether a finding says how much room a mic has: its clearance says more. */
export const isClearance = (finding: Finding): boolean =>
  finding.code === 'mic-struck' || finding.code === 'mic-tight';

const verdictRank: Readonly<Record<Verdict, number>> = { struck: 0, tight: 2, clear: 5 };
const severityRank: Readonly<Record<Finding['severity'], number>> = { stop: 1, warn: 3, note: 4 };

const rankOf = (row: FindingRow): number =>
  row.kind === 'mic' ? verdictRank[row.row.verdict] : severityRank[row.finding.severity];

/** Infinite clearances compare as equal, so that the order stays what it was. */
const sizeOf = (row: FindingRow): number =>
  row.kind === 'mic' ? Math.min(row.row.clearance, 1e9) : 0;

/** Mics that are struck or tight, or stand in a drum or cymbal, the worst first. */
export const inTheWay = (report: Report): readonly Id[] =>
  report.clearances
    .filter((row) => shownVerdict(row, report) !== 'clear')
    .toSorted((a, b) => a.clearance - b.clearance)
    .map(({ mic }) => mic);

/** What an id names: a mic or a piece; null when it is no longer in the layout. */
export function selectionOf(id: Id, layout: Layout): ThingSelection | null {
  if (layout.mics.some((mic) => mic.id === id)) return { kind: 'mic', id };
  return layout.pieces.some((piece) => piece.id === id) ? { kind: 'piece', id } : null;
}

/** Whether a finding is about the box itself: it is put right there. */
export const isAboutBox = ({ code, about }: Finding): boolean =>
  code === 'box-in-obstacle' ||
  code === 'box-off-deck' ||
  code === 'more-mics-than-inputs' ||
  (code === 'lane-blocked' && about.length === 0);

/** What a line is about and can be adjusted at, the main thing first. */
export function targetsOf(line: FindingRow, layout: Layout): readonly Selection[] {
  if (line.kind === 'finding' && isAboutBox(line.finding)) return [{ kind: 'box' }];
  const ids = line.kind === 'mic' ? [line.row.mic] : line.finding.about;
  return ids.map((id) => selectionOf(id, layout)).filter((selection) => selection !== null);
}
