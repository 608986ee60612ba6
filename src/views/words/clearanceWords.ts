import type { Layout } from '../../layout/layout.ts';
import type { ClearanceRow } from '../../report/report.ts';
import { micPartWords, movementWords } from './movementWords.ts';
import { placeWords } from './placeWords.ts';
import { clearanceAmount } from './verdictWords.ts';

/** One line: `12 mm too close: right stick, travelling from Snare to Ride`. */
export function clearanceWords(row: ClearanceRow, layout: Layout): string {
  const amount = clearanceAmount(row, layout);
  return row.nearest ? `${amount}: ${movementWords(row.nearest, layout)}` : amount;
}

/** Which part of the mic and where: `The boom, over Rack tom 1, on the player's side, 780 mm above the deck`. */
export function clearancePlace(row: ClearanceRow, layout: Layout): string | undefined {
  if (!row.nearest) return undefined;
  const part = micPartWords(row.nearest.micPart);
  return `${part}, ${placeWords(row.nearest.onMic, layout)}`;
}
