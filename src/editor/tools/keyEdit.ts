import type { Vec2 } from '../../geometry/vector.ts';
import {
  aimMic,
  changeClip,
  deleteMic,
  moveMicBase,
  moveMicTip,
  setMast,
  setPlateDepth,
  turnMicStand,
} from '../../layout/edit/mics.ts';
import { movePiece, raisePiece, tiltPiece, turnFeet, turnPiece } from '../../layout/edit/pieces.ts';
import { deletePiece } from '../../layout/edit/removePiece.ts';
import { moveBox, moveKit } from '../../layout/edit/stage.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import { isStruck, type Piece } from '../../layout/pieces/piece.ts';
import { placeMic } from '../../rig/placeMic.ts';
import type { Selection } from '../../session/selection.ts';
import { moveHub } from './moveHub.ts';

/** A change that a key asks for, in the frames of the layout. `times` counts a key that is held. */
export type KeyChange =
  | {
      readonly kind: 'nudge';
      readonly kit: Vec2;
      readonly deck: Vec2<'deck'>;
      readonly foot: boolean;
    }
  | { readonly kind: 'turn'; readonly by: number; readonly foot: boolean }
  | { readonly kind: 'lean'; readonly by: number }
  | { readonly kind: 'raise'; readonly by: number }
  /** The mast of a stand; its mic stays. */
  | { readonly kind: 'mast'; readonly by: number }
  | { readonly kind: 'remove' };

/** The layout after a key's change of what is selected; the same layout where the change means nothing to it. */
export function keyEdit(layout: Layout, selection: Selection, change: KeyChange): Layout {
  switch (selection.kind) {
    case 'piece': {
      const piece = layout.pieces.find(({ id }) => id === selection.id);
      return piece ? pieceEdit(layout, piece, change) : layout;
    }
    case 'mic': {
      const mic = layout.mics.find(({ id }) => id === selection.id);
      return mic ? micEdit(layout, mic, change) : layout;
    }
    case 'box':
      return boxEdit(layout, change);
    case 'deck':
      return kitEdit(layout, change);
    case 'player':
      return layout;
  }
}

function pieceEdit(layout: Layout, piece: Piece, change: KeyChange): Layout {
  const { id } = piece;
  switch (change.kind) {
    case 'nudge': {
      const { x, y } = change.kit;
      if (change.foot) return moveHub(layout, id, x, y);
      const at = piece.kind === 'throne' ? { x: 0, y: 0 } : piece;
      return movePiece(layout, id, { x: at.x + x, y: at.y + y });
    }
    case 'turn':
      if (!change.foot) return turnPiece(layout, id, change.by);
      return 'support' in piece && piece.support.kind !== 'held'
        ? turnFeet(layout, id, piece.support.turn + change.by)
        : layout;
    case 'lean':
      if (piece.kind === 'kick') return tiltPiece(layout, id, piece.rise + change.by);
      return isStruck(piece) ? tiltPiece(layout, id, piece.tilt + change.by) : layout;
    case 'raise':
      return 'z' in piece ? raisePiece(layout, id, piece.z + change.by) : layout;
    case 'mast':
      return layout;
    case 'remove':
      return deletePiece(layout, id);
  }
}

function micEdit(layout: Layout, mic: Mic, change: KeyChange): Layout {
  const { id, mount } = mic;
  switch (change.kind) {
    case 'nudge':
      return nudgedMic(layout, mic, change);
    case 'turn':
      if (mount.kind === 'clip') return changeClip(layout, id, { angle: mount.angle + change.by });
      if (mount.kind === 'plateOnDeck') {
        return aimMic(layout, id, { azimuth: mount.turn + change.by });
      }
      if (mount.kind !== 'stand') return layout;
      return change.foot
        ? turnMicStand(layout, id, mount.turn + change.by)
        : aimMic(layout, id, { azimuth: mount.azimuth + change.by });
    case 'lean':
      return mount.kind === 'clip' || mount.kind === 'stand'
        ? aimMic(layout, id, { pitch: mount.pitch + change.by })
        : layout;
    case 'raise':
      if (mount.kind === 'clip')
        return changeClip(layout, id, { height: mount.height + change.by });
      return mount.kind === 'stand'
        ? moveMicTip(layout, id, { ...mount.tip, z: mount.tip.z + change.by })
        : layout;
    case 'mast': {
      const clutch = placeMic(mic, layout).stand?.clutch;
      return clutch ? setMast(layout, id, Math.round(clutch.z) + change.by) : layout;
    }
    case 'remove':
      return deleteMic(layout, id);
  }
}

function nudgedMic(
  layout: Layout,
  mic: Mic,
  { kit, foot }: Extract<KeyChange, { kind: 'nudge' }>,
): Layout {
  const { id, mount } = mic;
  if (mount.kind === 'stand' && foot) {
    return moveMicBase(layout, id, { x: mount.base.x + kit.x, y: mount.base.y + kit.y });
  }
  const { tip, axis } = placeMic(mic, layout);
  // A plate in a kick slides along it: its axis points into the kick.
  if (mount.kind === 'plateInKick') {
    return setPlateDepth(layout, id, mount.depth + kit.x * axis.x + kit.y * axis.y);
  }
  return moveMicTip(layout, id, { x: tip.x + kit.x, y: tip.y + kit.y });
}

function boxEdit(layout: Layout, change: KeyChange): Layout {
  const { box } = layout;
  if (change.kind === 'nudge') {
    return moveBox(layout, { x: box.x + change.deck.x, y: box.y + change.deck.y });
  }
  return change.kind === 'turn'
    ? moveBox(layout, { x: box.x, y: box.y, turn: box.turn + change.by })
    : layout;
}

function kitEdit(layout: Layout, change: KeyChange): Layout {
  const { kit } = layout.deck;
  if (change.kind === 'nudge') {
    return moveKit(layout, { x: kit.x + change.deck.x, y: kit.y + change.deck.y });
  }
  return change.kind === 'turn' ? moveKit(layout, { turn: kit.turn + change.by }) : layout;
}

/** The change of a key that is held for so many steps. */
export function heldFor(change: KeyChange, times: number): KeyChange {
  switch (change.kind) {
    case 'nudge': {
      const { kit, deck } = change;
      return {
        ...change,
        kit: { x: kit.x * times, y: kit.y * times },
        deck: { x: deck.x * times, y: deck.y * times },
      };
    }
    case 'remove':
      return change;
    default:
      return { ...change, by: change.by * times };
  }
}
