import type { Layout } from '../../layout/layout.ts';
import type { ClearanceRow, Finding } from '../../report/report.ts';
import { micPartWords, movementWords } from './movementWords.ts';
import { capitalised } from './nameOf.ts';
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

/** Nearer than this to where a finding says it is, a place is not told again, mm. */
const SAME_PLACE = 50;

/**
 * The room that a mic has from what moves, said after why it can't stay: `From what moves: 65 mm too close (Ride, swinging).`, with its place
 * where that is another.
 */
export function movingWords(row: ClearanceRow, told: readonly Finding[], layout: Layout): string {
  const { nearest, verdict } = row;
  const moves = nearest ? ` (${movementWords(nearest, layout)})` : '';
  const said = `From what moves: ${clearanceAmount(row, layout)}${moves}.`;
  const isTold = told.some(({ place }) => {
    if (!place || !nearest) return false;
    const { x, y, z } = nearest.onMic;
    return Math.hypot(place.x - x, place.y - y, place.z - z) < SAME_PLACE;
  });
  const place = verdict === 'clear' || isTold ? undefined : clearancePlace(row, layout);
  return place === undefined ? said : `${said} ${capitalised(place)}.`;
}
