import type { Layout } from '../../layout/layout.ts';
import type { ClearanceRow, Finding, Report } from '../../report/report.ts';
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

/**
 * Every mic once and every other finding once, the worst first: struck mics, what stops the show, tight mics, warnings,
 * notes, clear mics. Mics of one verdict stand by their clearance, findings in the report's order.
 */
export function worstFirst(report: Report): readonly FindingRow[] {
  const aboutMic = new Map<string, Finding>();
  const rows: FindingRow[] = [];
  for (const finding of report.findings) {
    const mic = finding.about[0];
    if (isClearance(finding) && mic !== undefined) aboutMic.set(mic, finding);
    else rows.push({ kind: 'finding', key: finding.key, finding });
  }
  for (const row of report.clearances) {
    const finding = aboutMic.get(row.mic);
    rows.push({ kind: 'mic', key: finding?.key ?? `mic:${row.mic}`, row, finding });
  }
  return rows
    .map((row, index) => ({ row, rank: rankOf(row), size: sizeOf(row), index }))
    .sort((a, b) => a.rank - b.rank || a.size - b.size || a.index - b.index)
    .map(({ row }) => row);
}

const isClearance = (finding: Finding): boolean =>
  finding.code === 'mic-struck' || finding.code === 'mic-tight';

const verdictRank: Readonly<Record<Verdict, number>> = { struck: 0, tight: 2, clear: 5 };
const severityRank: Readonly<Record<Finding['severity'], number>> = { stop: 1, warn: 3, note: 4 };

const rankOf = (row: FindingRow): number =>
  row.kind === 'mic' ? verdictRank[row.row.verdict] : severityRank[row.finding.severity];

/** Infinite clearances compare as equal, so that the order stays what it was. */
const sizeOf = (row: FindingRow): number =>
  row.kind === 'mic' ? Math.min(row.row.clearance, 1e9) : 0;

/** How many mics have each verdict. */
export function verdictCounts(report: Report): Readonly<Record<Verdict, number>> {
  const counts = { clear: 0, tight: 0, struck: 0 };
  for (const row of report.clearances) counts[row.verdict] += 1;
  return counts;
}

/** What a finding selects: its mic or piece, the first that is still in the layout. */
export function selectionOf(ids: readonly string[], layout: Layout) {
  for (const id of ids) {
    if (layout.mics.some((mic) => mic.id === id)) return { kind: 'mic', id } as const;
    if (layout.pieces.some((piece) => piece.id === id)) return { kind: 'piece', id } as const;
  }
  return null;
}
