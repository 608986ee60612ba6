import type { Vec2 } from '../../geometry/vector.ts';
import { turnMicStand } from '../../layout/edit/mics.ts';
import { turnFeet } from '../../layout/edit/pieces.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { StandMount } from '../../layout/mics/mount.ts';
import type { Piece } from '../../layout/pieces/piece.ts';
import { restOnStep } from './detent.ts';
import { type Drag, type Hold, turnedAbout } from './drag.ts';
import { moveHub } from './moveHub.ts';

/** Turns the feet of a piece's stand or legs about their hub. */
export function dragPieceFeet(
  piece: Piece,
  feet: { readonly hub: Vec2; readonly turn: number },
  hold: Hold,
): Drag {
  return {
    label: `Turn the feet of ${piece.name}`,
    to(place) {
      const by = turnedAbout(feet.hub, hold.from.kit, place.kit);
      return (layout) => turnFeet(layout, piece.id, restOnStep(feet.turn, by));
    },
  };
}

/** Moves the hub of a piece's stand; the piece stays where it is. */
export function dragHub(piece: Piece, hold: Hold): Drag {
  return {
    label: `Move the stand of ${piece.name}`,
    to(place) {
      const dx = place.kit.x - hold.from.kit.x;
      const dy = place.kit.y - hold.from.kit.y;
      return (layout) => moveHub(layout, piece.id, dx, dy);
    },
  };
}

/** Turns the legs of a mic's tripod about its base. */
export function dragTripod(mic: Mic, mount: StandMount, hold: Hold): Drag {
  return {
    label: `Turn the feet of ${hold.nameOf(mic)}`,
    to(place) {
      const by = turnedAbout(mount.base, hold.from.kit, place.kit);
      return (layout) => turnMicStand(layout, mic.id, restOnStep(mount.turn, by));
    },
  };
}
