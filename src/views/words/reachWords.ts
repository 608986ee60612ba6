import type { Layout } from '../../layout/layout.ts';
import type { ClearanceRow, Report } from '../../report/report.ts';
import { listed, nameOf } from './nameOf.ts';

/**
 * Said of a mic whose nearest move is of a piece that the hand does not reach: `The player's left hand does not reach Rack tom: the move is
 * computed as if it did.` Empty for any other.
 */
export function unreachedWords(
  { nearest }: Pick<ClearanceRow, 'nearest'>,
  { findings }: Pick<Report, 'findings'>,
  layout: Layout,
): string {
  const { movement } = nearest ?? {};
  if (movement?.kind !== 'stroke' && movement?.kind !== 'travel') return '';
  const { hand } = movement;
  const pieces = movement.kind === 'stroke' ? [movement.on] : [movement.from, movement.to];
  const beyond = pieces.filter((piece) =>
    findings.some(
      ({ code, about, numbers }) =>
        code === 'piece-out-of-reach' && about[0] === piece && numbers[hand] !== undefined,
    ),
  );
  if (beyond.length === 0) return '';
  const names = listed(beyond.map((piece) => nameOf(layout, piece)));
  return `The player's ${hand} hand does not reach ${names}: the move is computed as if it did.`;
}
