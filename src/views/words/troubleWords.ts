import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { standsInSwing } from '../../report/findings/standsInSwing.ts';
import { judgementOf, whyNot } from '../../report/judgement.ts';
import type { ClearanceRow, Finding, Report } from '../../report/report.ts';
import { showClearance } from '../../units/clearanceText.ts';
import { showLength } from '../../units/lengthText.ts';
import { nameOf } from './nameOf.ts';
import { gapWords, playerPartWords } from './playerFindingWords.ts';

/** The findings by which a mic can't stay, the worst first; none where its verdict is what is said of it. */
export function troublesOf(
  row: Pick<ClearanceRow, 'mic' | 'verdict'>,
  report: Pick<Report, 'findings'>,
): readonly Finding[] {
  return judgementOf(row, report) === row.verdict ? [] : whyNot(row.mic, report);
}

/** In short why a mic can't stay, after what is said of it: `in Rack tom, 34 mm deep`, `against hardware of Ride, 6 mm deep`, `out of reach by 1166 mm`, `tips over`. */
export function troubleWords(finding: Finding, mic: Id, layout: Layout): string {
  const { code, about, numbers } = finding;
  const shown = (length: number | undefined): string =>
    length === undefined ? '' : showLength(Math.ceil(length), layout.units);
  const by = (length: number | undefined): string =>
    length === undefined ? '' : ` by ${shown(length)}`;
  switch (code) {
    case 'mic-beyond-stand':
      return numbers.folded === undefined
        ? `out of reach${by(numbers.beyond)}`
        : `boom too long${by(numbers.folded)}`;
    case 'stand-may-tip':
      return 'tips over';
    case 'base-off-deck':
      return `over the edge${by(numbers.beyond)}`;
    case 'mic-near-player':
      return `${gapWords(finding, layout)} ${playerPartWords(finding)}`;
    default: {
      const other = about.find((id) => id !== mic);
      const named = other === undefined ? '' : `${relationOf(code)} ${nameOf(layout, other)}`;
      const where = playerPartWords(finding) ?? named;
      const depth = numbers.depth === undefined ? '' : `${shown(numbers.depth)} deep`;
      return [where, depth].filter((part) => part !== '').join(', ');
    }
  }
}

function relationOf(code: Finding['code']): string {
  if (code === 'mic-against-stand') return 'against hardware of';
  return code === 'mic-against-mic' ? 'against' : 'in';
}

/** The figure that stands with what is said of a mic: its clearance, or why it can't stay: `−12 mm`, `in Rack tom, 34 mm deep`. */
export function figureWords(
  row: ClearanceRow,
  report: Pick<Report, 'findings'>,
  layout: Layout,
): string {
  const [worst] = troublesOf(row, report);
  return worst ? troubleWords(worst, row.mic, layout) : showClearance(row.clearance, layout);
}

/** All of it, for a line that has room: `in Rack tom, 34 mm deep; tips over; struck too`. Empty where the mic can stay. */
export function troublesWords(
  row: ClearanceRow,
  report: Pick<Report, 'findings'>,
  layout: Layout,
): string {
  const troubles = troublesOf(row, report);
  if (troubles.length === 0) return '';
  const said = troubles.slice(0, MOST_SAID).map((each) => troubleWords(each, row.mic, layout));
  const more = troubles.length - said.length;
  return [
    ...said,
    ...(more > 0 ? [`${more} more`] : []),
    // What swings through a mic that stands in it is told as that.
    ...(row.verdict === 'struck' && !troubles.some((each) => standsInSwing(row, each))
      ? ['struck too']
      : []),
  ].join('; ');
}

/** A mic that stands in more than this is nowhere near its place. */
const MOST_SAID = 2;
