import { changeClip, moveMicTip, setMast } from '../../layout/edit/mics.ts';
import { raisePiece } from '../../layout/edit/pieces.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { ClipMount, StandMount } from '../../layout/mics/mount.ts';
import type { Drum } from '../../layout/pieces/drum.ts';
import { isDrum } from '../../layout/pieces/piece.ts';
import type { PlacedMic } from '../../rig/placed.ts';
import type { OpenLayout } from '../../session/session.ts';
import { cosDeg } from '../../units/angle.ts';
import type { Mm } from '../../units/quantity.ts';
import type { Pickable } from '../pick/pickables.ts';
import { restOnStart } from './detent.ts';
import type { Drag, Hold } from './drag.ts';

/**
 * Rule E2: a drag in an elevation changes heights and nothing else: only how far the finger goes up or down counts. A height rests
 * where it began until the finger is beyond the detent's reach.
 */
function heightDrag(label: string, hold: Hold, raised: (layout: Layout, by: Mm) => Layout): Drag {
  return {
    label,
    to(place) {
      const by = restOnStart(0, place.kit.y - hold.from.kit.y, hold.near);
      return (layout) => (by === 0 ? layout : raised(layout, by));
    },
  };
}

/** Raises and lowers a piece, as far as it has a height of its own. */
export const dragPieceHeight = (
  piece: { readonly id: string; readonly name: string; readonly z: Mm },
  hold: Hold,
): Drag =>
  heightDrag(`Raise ${piece.name}`, hold, (layout, by) =>
    raisePiece(layout, piece.id, piece.z + by),
  );

/** Raises and lowers the front of a mic on a stand; its base and its place on the plan stay. */
export const dragTipHeight = (mic: Mic, { tip }: StandMount, hold: Hold): Drag =>
  heightDrag(`Raise ${hold.nameOf(mic)}`, hold, (layout, by) =>
    moveMicTip(layout, mic.id, { ...tip, z: tip.z + by }),
  );

/** A head that leans more than this (the cosine) would send its clip far for a little way of the finger. */
const LEAST_UPRIGHT = 0.2;

/** Raises and lowers a clip mic over its head: it moves square to the head, so that its tip follows the finger's height. */
export function dragClipHeight(mic: Mic, mount: ClipMount, drum: Drum, hold: Hold): Drag {
  const upright = Math.max(LEAST_UPRIGHT, cosDeg(drum.tilt));
  return heightDrag(`Raise ${hold.nameOf(mic)}`, hold, (layout, by) =>
    changeClip(layout, mic.id, { height: mount.height + by / upright }),
  );
}

/** Raises and lowers the clutch of a boom on its mast; the mic stays where it is. */
export function dragMast({ mic, stand }: PlacedMic, hold: Hold): Drag {
  const start = stand?.clutch.z ?? 0;
  return heightDrag(`Raise the mast of ${hold.nameOf(mic)}`, hold, (layout, by) =>
    setMast(layout, mic.id, Math.round(start + by)),
  );
}

/** What a drag of something in an elevation does; undefined where it has no height of its own. The layout's own rig, not the turned. */
export function heightDragOf(
  { selection, grip }: Pick<Pickable, 'selection' | 'grip'>,
  { layout, report }: OpenLayout,
): ((hold: Hold) => Drag) | undefined {
  if (selection.kind === 'piece') {
    const piece = layout.pieces.find(({ id }) => id === selection.id);
    return piece && 'z' in piece ? (hold) => dragPieceHeight(piece, hold) : undefined;
  }
  if (selection.kind !== 'mic') return undefined;
  const placed = report.rig.mics.find(({ mic }) => mic.id === selection.id);
  return placed && micHeightDrag(placed, grip, layout);
}

function micHeightDrag(
  placed: PlacedMic,
  grip: Pickable['grip'],
  layout: Layout,
): ((hold: Hold) => Drag) | undefined {
  const { mic } = placed;
  const { mount } = mic;
  if (mount.kind === 'clip') {
    const drum = layout.pieces.find(({ id }) => id === mount.drum);
    return drum && isDrum(drum) ? (hold) => dragClipHeight(mic, mount, drum, hold) : undefined;
  }
  if (mount.kind !== 'stand' || grip === 'base') return undefined;
  return grip === 'tip'
    ? (hold) => dragTipHeight(mic, mount, hold)
    : (hold) => dragMast(placed, hold);
}
