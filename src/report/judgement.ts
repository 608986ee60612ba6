import { remembered } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { ClearanceRow, Finding, FindingCode, Report } from './report.ts';
import { micsStandingIn } from './standingIn.ts';

/**
 * What is said of a mic as it stands:
 * J1 `in-the-way`: it stands in something with nothing moving, as a drum, its stand or another mic: the worst, whatever room it has from what moves;
 * J2 `not-held`: its stand can't hold it there, unless it is struck;
 * J3 else its clearance's own verdict;
 * J4 but one that is clear by that and closer than the margin to the player sitting upright is `near-player`: as bad as tight.
 */
export type Judgement = ClearanceRow['verdict'] | CantStay['why'];

/** Why a mic can't stay where it is, or had better not, the worst of J1, J2 and J4 it has. */
export interface CantStay {
  readonly why: 'in-the-way' | 'not-held' | 'near-player';
  /** What says so, J1 before J2 before J4, else in the report's order. At least one. */
  readonly findings: readonly [Finding, ...Finding[]];
}

/** What a report's mics are judged by. */
export type Judging = Pick<Report, 'clearances' | 'findings'>;

/** Findings of a mic's stand that must be solved. A stand that only may tip is weighted, and holds it. */
const STAND: ReadonlySet<FindingCode> = new Set([
  'mic-beyond-stand',
  'base-off-deck',
  'stand-may-tip',
]);

/** Which mics can't stay by a finding, and why; undefined for a finding that says nothing of the kind. */
export function staysNot(
  finding: Pick<Finding, 'code' | 'severity' | 'about'>,
): { readonly why: CantStay['why']; readonly mics: readonly Id[] } | undefined {
  const within = micsStandingIn(finding);
  if (within.length > 0) return { why: 'in-the-way', mics: within };
  const { code, severity, about } = finding;
  if (code === 'mic-near-player') return { why: 'near-player', mics: about.slice(0, 1) };
  if (severity !== 'stop') return undefined;
  return STAND.has(code) ? { why: 'not-held', mics: about.slice(0, 1) } : undefined;
}

/** Whether a finding says how much room a mic has: its clearance says more. */
export const isClearance = ({ code }: Pick<Finding, 'code'>): boolean =>
  code === 'mic-struck' || code === 'mic-tight';

/** Whether a finding is about a mic's place: its room, or why it can't stay there. It is told with the first mic that it is about. */
export const isOfPlace = (finding: Pick<Finding, 'code' | 'severity' | 'about'>): boolean =>
  isClearance(finding) || staysNot(finding) !== undefined;

/** The mics that can't stay where they are, or had better not. */
export const cantStay = remembered(
  ({ findings }: Pick<Report, 'findings'>): ReadonlyMap<Id, CantStay> => {
    const found = new Map<Id, CantStay>();
    const add = (why: CantStay['why']): void => {
      for (const finding of findings) {
        const said = staysNot(finding);
        if (said?.why !== why) continue;
        for (const mic of said.mics) {
          const known = found.get(mic);
          found.set(
            mic,
            known
              ? { ...known, findings: [...known.findings, finding] }
              : { why, findings: [finding] },
          );
        }
      }
    };
    add('in-the-way');
    add('not-held');
    add('near-player');
    return found;
  },
);

/** By which findings a mic can't stay, or had better not, the worst first; none where nothing says so. */
export const whyNot = (mic: Id, report: Pick<Report, 'findings'>): readonly Finding[] =>
  cantStay(report).get(mic)?.findings ?? [];

/** What is said of a mic (J1 to J4). */
export function judgementOf(
  { mic, verdict }: Pick<ClearanceRow, 'mic' | 'verdict'>,
  report: Pick<Report, 'findings'>,
): Judgement {
  switch (cantStay(report).get(mic)?.why) {
    case 'in-the-way':
      return 'in-the-way';
    case 'not-held':
      return verdict === 'struck' ? verdict : 'not-held';
    case 'near-player':
      return verdict === 'clear' ? 'near-player' : verdict;
    default:
      return verdict;
  }
}

/** The verdict whose mark stands for a judgement: a mic that can't stay is never marked as clear or tight, one near the player never as clear. */
export function markOf(judged: Judgement): ClearanceRow['verdict'] {
  if (judged === 'near-player') return 'tight';
  return judged === 'in-the-way' || judged === 'not-held' ? 'struck' : judged;
}

/** A mic's verdict as it is marked. */
export const shownVerdict = (
  row: Pick<ClearanceRow, 'mic' | 'verdict'>,
  report: Pick<Report, 'findings'>,
): ClearanceRow['verdict'] => markOf(judgementOf(row, report));

/** How many mics there are of each judgement. */
export function judgementCounts(report: Judging): Readonly<Record<Judgement, number>> {
  const counts = {
    struck: 0,
    'in-the-way': 0,
    'not-held': 0,
    tight: 0,
    'near-player': 0,
    clear: 0,
  };
  for (const row of report.clearances) counts[judgementOf(row, report)] += 1;
  return counts;
}

/** How bad a mic is among those with one mark: the deeper it stands in something or the nearer it is to what moves, the smaller, mm. */
export function nearnessOf(
  { mic, clearance }: Pick<ClearanceRow, 'mic' | 'clearance'>,
  report: Pick<Report, 'findings'>,
): number {
  // Infinite ones compare as equal, so that the order stays what it was.
  const room = Math.min(clearance, 1e9);
  const depths = cantStay(report)
    .get(mic)
    ?.findings.map(({ numbers }) => numbers.depth ?? -(numbers.gap ?? 0));
  return depths ? Math.min(room, -Math.max(...depths)) : room;
}

const MARKS: readonly ClearanceRow['verdict'][] = ['struck', 'tight', 'clear'];

/** The mics' clearances, the worst first by what is said of them. */
export const rowsWorstFirst = (report: Judging): readonly ClearanceRow[] =>
  report.clearances
    .map((row) => ({
      row,
      mark: MARKS.indexOf(shownVerdict(row, report)),
      size: nearnessOf(row, report),
    }))
    .sort((a, b) => a.mark - b.mark || a.size - b.size)
    .map(({ row }) => row);
