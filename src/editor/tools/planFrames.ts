import { type KitView, moveInKit } from '../view/kitView.ts';
import { axesOf } from '../view/view.ts';
import type { KeyChange } from './keyEdit.ts';
import type { ChangeCommand } from './keys.ts';

/** A nudge on the screen as one in the kit's and the deck's frames; every other command as it is. */
export function inPlanFrames(command: ChangeCommand, kitView: KitView): KeyChange {
  if (command.kind !== 'nudge') return command;
  const { x, y, foot } = command;
  const axes = axesOf(kitView.view);
  const { scale } = kitView.view;
  const kit = moveInKit(kitView, { x: x * scale, y: y * scale });
  return { kind: 'nudge', kit, deck: { x: (x * scale) / axes.x, y: (y * scale) / axes.y }, foot };
}
