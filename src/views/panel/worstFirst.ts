import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import {
  isClearance,
  isOfPlace,
  judgementOf,
  nearnessOf,
  shownVerdict,
  staysNot,
} from '../../report/judgement.ts';
import type { ClearanceRow, Finding, FindingCode, Report } from '../../report/report.ts';
import { isBetweenMics, withoutMeetings } from '../../report/standingIn.ts';
import type { Selection } from '../../session/selection.ts';
import type { Verdict } from '../words/verdictWords.ts';

/** One line of the findings list: a mic with its clearance and why it can't stay, or a finding about anything else. */
export type FindingRow =
  | {
      readonly kind: 'mic';
      readonly key: string;
      readonly row: ClearanceRow;
      /** What is open about its place, the main thing first: what it is called by. Of two mics that meet it is told with the first. */
      readonly findings: readonly Finding[];
    }
  | { readonly kind: 'finding'; readonly key: string; readonly finding: Finding };

type ThingSelection = Extract<Selection, { kind: 'mic' | 'piece' }>;

/**
 * Every mic once and every other finding once, the worst first by what is shown of them: mics that are struck or can't stay, what else stops the
 * show, tight mics, warnings, notes, clear mics. Mics of one rank stand by how deep it is or by their clearance, findings in the report's order.
 */
export function worstFirst(report: Report): readonly FindingRow[] {
  return linesOf(report)
    .map((row, index) => ({ row, rank: rankOf(row, report), size: sizeOf(row, report), index }))
    .sort((a, b) => a.rank - b.rank || a.size - b.size || a.index - b.index)
    .map(({ row }) => row);
}

/**
 * How many things must be solved (mics that are struck or can't stay, and whatever else stops the show) and should be looked at (tight mics and warnings).
 * That two mics meet is one thing to solve, with two lines that are marked; what else is wrong with one of them is another, so that no count rises when
 * something is solved.
 */
export function countByNeed(report: Report): { readonly solve: number; readonly look: number } {
  const apart = withoutMeetings(report);
  let [solve, look] = [0, 0];
  for (const line of linesOf(report)) {
    const rank = rankOf(line, report);
    if (rank <= severityRank.stop) solve += thingsToSolve(line, apart);
    else if (rank <= severityRank.warn) look += 1;
  }
  return { solve, look };
}

/** What a line that stops the show counts for; `apart` has all that is wrong but where mics meet. */
function thingsToSolve(line: FindingRow, apart: Pick<Report, 'findings'>): number {
  if (line.kind === 'finding') return 1;
  const meetings = line.findings.filter(isBetweenMics).length;
  return meetings + Number(shownVerdict(line.row, apart) === 'struck');
}

/** The lines in no order: findings about a mic's place go with its clearance. */
function linesOf(report: Report): readonly FindingRow[] {
  const ofMic = new Map(report.clearances.map(({ mic }): [Id, Finding[]] => [mic, []]));
  const rows: FindingRow[] = [];
  for (const finding of report.findings) {
    const [mic] = finding.about;
    const own = mic !== undefined && isOfPlace(finding) ? ofMic.get(mic) : undefined;
    if (own) own.push(finding);
    else rows.push({ kind: 'finding', key: finding.key, finding });
  }
  for (const row of report.clearances) {
    const found = ofMic.get(row.mic) ?? [];
    const judged = judgementOf(row, report);
    const isMain = (finding: Finding): boolean =>
      judged === row.verdict ? isClearance(finding) : staysNot(finding)?.why === judged;
    const findings = [...found.filter(isMain), ...found.filter((finding) => !isMain(finding))];
    rows.push({ kind: 'mic', key: findings[0]?.key ?? `mic:${row.mic}`, row, findings });
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
  const isThere = shownLine(rows, shownKey) !== undefined;
  const open = isThere ? [] : old.filter((row) => row.kind === 'finding' && row.key === shownKey);
  return [...rows, ...open].toSorted((a, b) => place(a) - place(b));
}

/** The line that tells the finding that is pointed at. A mic's stays the one while its verdict, and with it the finding's key, changes. */
export function shownLine(
  rows: readonly FindingRow[],
  shownKey: string | null,
): FindingRow | undefined {
  if (shownKey === null) return undefined;
  const isTold = (line: FindingRow): boolean =>
    line.key === shownKey ||
    (line.kind === 'mic' && line.findings.some(({ key }) => key === shownKey));
  return rows.find(isTold) ?? rows.find((line) => line.kind === 'mic' && wasOf(line, shownKey));
}

/** Whether a finding that is no more was told by a mic's line. Keys begin with the code and the ids (`Finding.key`). */
function wasOf({ row: { mic } }: Extract<FindingRow, { kind: 'mic' }>, key: string): boolean {
  const code = key.slice(0, key.indexOf(':')) as FindingCode | 'mic';
  if (!`${key}:`.startsWith(`${code}:${mic}:`)) return false;
  return code === 'mic' || isOfPlace({ code, severity: 'stop', about: [mic] });
}

/** What a line is about, whatever its verdict. */
const idOf = (row: FindingRow): string => (row.kind === 'mic' ? `mic:${row.row.mic}` : row.key);

const verdictRank: Readonly<Record<Verdict, number>> = { struck: 0, tight: 2, clear: 5 };
const severityRank: Readonly<Record<Finding['severity'], number>> = { stop: 1, warn: 3, note: 4 };

const rankOf = (line: FindingRow, report: Report): number =>
  line.kind === 'mic'
    ? verdictRank[shownVerdict(line.row, report)]
    : severityRank[line.finding.severity];

const sizeOf = (line: FindingRow, report: Report): number =>
  line.kind === 'mic' ? nearnessOf(line.row, report) : 0;

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
  const ids =
    line.kind === 'mic'
      ? new Set([line.row.mic, ...line.findings.flatMap(({ about }) => about)])
      : line.finding.about;
  return [...ids].map((id) => selectionOf(id, layout)).filter((selection) => selection !== null);
}
