import type { Layout } from '../../layout/layout.ts';
import { isDrum } from '../../layout/pieces/piece.ts';
import type { Rig } from '../../rig/placed.ts';
import type { Selection } from '../../session/selection.ts';
import type { OpenLayout } from '../../session/session.ts';
import { FINGER } from '../pick/pick.ts';
import type { Grip, Pickable } from '../pick/pickables.ts';
import type { ScreenPoint } from '../view/view.ts';
import type { Drag, Hold } from './drag.ts';
import { dragClip } from './dragClip.ts';
import { dragBase, dragPlate, dragTip, dragWholeMic } from './dragMic.ts';
import { dragPiece } from './dragPiece.ts';
import { dragBox } from './dragStage.ts';
import type { Handle } from './handles.ts';

/** What a finger would take hold of. */
export interface Grab {
  readonly selection: Selection;
  start(hold: Hold): Drag;
}

/** The handle under a finger, the nearest first. */
export function handleAt(handles: readonly Handle[], at: ScreenPoint): Handle | undefined {
  const away = ({ at: place }: Handle): number => Math.hypot(place.x - at.x, place.y - at.y);
  const near = handles.filter((handle) => away(handle) <= FINGER);
  return near.reduce<Handle | undefined>(
    (best, handle) => (best && away(best) <= away(handle) ? best : handle),
    undefined,
  );
}

/** What a drag of something on the plan does; undefined where it can't be dragged. */
export function dragOf(
  { selection, grip }: Pick<Pickable, 'selection' | 'grip'>,
  { layout, report: { rig } }: OpenLayout,
): ((hold: Hold) => Drag) | undefined {
  switch (selection.kind) {
    case 'piece': {
      const piece = layout.pieces.find(({ id }) => id === selection.id);
      return piece && ((hold) => dragPiece(piece, hold));
    }
    case 'mic':
      return micDrag(selection.id, grip, layout, rig);
    case 'box':
      return (hold) => dragBox(layout.box, hold);
    default:
      return undefined;
  }
}

function micDrag(
  id: string,
  grip: Grip,
  layout: Layout,
  rig: Rig,
): ((hold: Hold) => Drag) | undefined {
  const placed = rig.mics.find(({ mic }) => mic.id === id);
  if (!placed || grip === 'cable') return undefined;
  const { mic } = placed;
  const { mount } = mic;
  if (mount.kind === 'plateInKick') {
    const kick = layout.pieces.find((piece) => piece.id === mount.kick);
    return kick?.kind === 'kick' ? (hold) => dragPlate(mic, mount.depth, kick, hold) : undefined;
  }
  if (mount.kind === 'stand' && grip === 'base') return (hold) => dragBase(mic, mount, hold);
  if (mount.kind === 'stand' && grip === 'whole') return (hold) => dragWholeMic(mic, hold);
  if (mount.kind === 'clip') {
    const drum = layout.pieces.find((piece) => piece.id === mount.drum);
    return drum && isDrum(drum) ? (hold) => dragClip({ placed, mount, drum }, hold) : undefined;
  }
  return (hold) => dragTip(placed, hold);
}
