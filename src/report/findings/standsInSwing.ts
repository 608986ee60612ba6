import type { MicClearance } from '../../clearance/nearest.ts';
import type { Id } from '../../layout/fields.ts';

interface InTheWay {
  readonly code: string;
  readonly about: readonly Id[];
}

/**
 * S1 A mic or boom that stands in a cymbal is there with nothing moving, and the swing of that cymbal can only reach it more: it is told
 *    once, as standing in it, the worse of the two. Where anything else reaches deeper, both are told: they are put right apart.
 */
export const standsInSwing = (
  { mic, nearest }: Pick<MicClearance, 'mic' | 'nearest'>,
  { code, about }: InTheWay,
): boolean =>
  nearest?.movement.kind === 'swing' &&
  (code === 'mic-in-shell' || code === 'boom-through-piece') &&
  about[0] === mic &&
  about[1] === nearest.movement.cymbal;
