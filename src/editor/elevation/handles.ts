import type { Vec3 } from '../../geometry/vector.ts';
import type { Rig } from '../../rig/placed.ts';
import type { Selection } from '../../session/selection.ts';
import type { OpenLayout } from '../../session/session.ts';
import { heightDragOf } from '../tools/dragHeight.ts';
import { apart, type Handle } from '../tools/handles.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';

/** The handles of what is selected in an elevation: one for every height it has (rule H1). */
export function elevationHandles(
  open: OpenLayout,
  turned: Rig,
  selection: Selection | null,
  kitView: KitView,
): readonly Handle[] {
  if (selection === null) return [];
  const handle = (grip: 'whole' | 'tip', spot: Vec3 | undefined): readonly Handle[] => {
    const start = heightDragOf({ selection, grip }, open);
    if (!start || !spot) return [];
    const at = kitToScreen(kitView, spot);
    return [{ kind: 'raise', anchor: at, at, start }];
  };
  if (selection.kind === 'piece') {
    const placed = turned.pieces.find(({ piece }) => piece.id === selection.id);
    return handle('whole', placed?.shells[0]?.centre);
  }
  if (selection.kind !== 'mic') return [];
  const placed = turned.mics.find(({ mic }) => mic.id === selection.id);
  const mast = placed?.stand ? handle('whole', placed.stand.clutch) : [];
  return apart([...handle('tip', placed?.tip), ...mast], null);
}
