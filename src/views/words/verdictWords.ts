import type { ClearanceRow } from '../../report/report.ts';
import { type LengthUnit, roundedDown, showLength, showRoom } from '../../units/lengthText.ts';
import type { Mm } from '../../units/quantity.ts';

export type Verdict = ClearanceRow['verdict'];

const words: Readonly<Record<Verdict, string>> = {
  clear: 'Clear',
  tight: 'Tight',
  struck: 'Struck',
};

/** The verdict as one word. */
export const verdictWord = (verdict: Verdict): string => words[verdict];

/** The number alone: `84 mm`, `under 1 mm`, `−12 mm`; a dash when nothing moves near. */
export const clearanceNumber = (clearance: Mm, unit: LengthUnit): string =>
  Number.isFinite(clearance) ? showRoom(clearance, unit) : '–';

/** The clearance as a person says it: `12 mm too close`, `38 mm away, 12 mm inside the margin`, `84 mm clear`. */
export function clearanceAmount(
  row: Pick<ClearanceRow, 'clearance' | 'verdict'>,
  margin: Mm,
  unit: LengthUnit,
): string {
  if (!Number.isFinite(row.clearance)) return 'nothing moves near it';
  const shown = roundedDown(row.clearance, unit);
  if (row.verdict === 'struck') return `${showLength(-shown, unit)} too close`;
  const room = showRoom(row.clearance, unit);
  if (row.verdict === 'clear') return `${room} clear`;
  return `${room} away, ${showLength(margin - shown, unit)} inside the margin`;
}
