import { vec } from '../../geometry/vector.ts';
import type { Deck } from '../../layout/deck.ts';
import { toDeck } from '../../rig/deckFrame.ts';
import type { Standpoint } from '../../rig/standpoint.ts';
import type { KeyChange } from '../tools/keyEdit.ts';
import type { ChangeCommand } from '../tools/keys.ts';

/**
 * What keys mean in an elevation (rule E3): arrows up and down raise and lower, with Control the mast of a stand; arrows to the side
 * move along the elevation. Every other command is that of the plan.
 */
export function inElevation(
  command: ChangeCommand,
  deck: Pick<Deck, 'kit'>,
  { direction }: Pick<Standpoint, 'direction'>,
): KeyChange {
  if (command.kind !== 'nudge') return command;
  const { x, y, foot } = command;
  if (y !== 0) return { kind: foot ? 'mast' : 'raise', by: -y };
  // The right of the screen among the kit's own directions.
  const kit = { x: x * direction(vec(1, 0, 0)).x, y: x * direction(vec(0, 1, 0)).x };
  const turnOnly = { kit: { x: 0, y: 0, turn: deck.kit.turn } };
  return { kind: 'nudge', kit, deck: toDeck(turnOnly, kit), foot };
}
