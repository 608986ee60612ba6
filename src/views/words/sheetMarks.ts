import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { piecesInOrder } from '../../report/placement/steps.ts';

/** The marks by which drawings and tables name things: `P1` and on for pieces in the order of setting up, `M1` and on for mics, `Box`. */
export function sheetMarks({ pieces, mics }: Layout): ReadonlyMap<Id, string> {
  return new Map([
    ...piecesInOrder(pieces).map(({ id }, i) => [id, `P${i + 1}`] as const),
    ...mics.map(({ id }, i) => [id, `M${i + 1}`] as const),
    ['box', 'Box'] as const,
  ]);
}
