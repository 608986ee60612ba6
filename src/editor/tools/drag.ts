import type { Vec2 } from '../../geometry/vector.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { RingOfMic } from '../../report/ring.ts';
import type { LayoutEdit } from '../../session/session.ts';
import { toDegrees } from '../../units/angle.ts';
import type { Degrees } from '../../units/quantity.ts';

/** Where the finger is, in both frames of the layout as it was when the drag began. */
export interface Place {
  readonly kit: Vec2;
  readonly deck: Vec2<'deck'>;
}

/** One drag: what it is called for undo, and the change of the layout before it that a place of the finger means. */
export interface Drag {
  readonly label: string;
  to(place: Place): LayoutEdit;
}

/** Where a drag takes hold, and how near to a detent counts as on it (mm; it is a few px of the screen). */
export interface Hold {
  readonly from: Place;
  readonly near: number;
  readonly pxPerMm: number;
  /** What a mic is called, told from a piece of the same name. */
  nameOf(mic: Mic): string;
  /** The rim ring of what is dragged, as far as it is known by now. */
  ring(): RingOfMic | null;
}

/** A spot moved as far as the finger moved from where it took hold: nothing jumps under the finger. */
export const carried = (spot: Vec2, hold: Hold, place: Place): Vec2 => ({
  x: spot.x + place.kit.x - hold.from.kit.x,
  y: spot.y + place.kit.y - hold.from.kit.y,
});

export const carriedOnDeck = (spot: Vec2<'deck'>, hold: Hold, place: Place): Vec2<'deck'> => ({
  x: spot.x + place.deck.x - hold.from.deck.x,
  y: spot.y + place.deck.y - hold.from.deck.y,
});

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** How far the finger turned about a pivot since it took hold, degrees in (-180, 180]. */
export function turnedAbout(pivot: Spot, from: Spot, to: Spot): Degrees {
  const before = Math.atan2(from.y - pivot.y, from.x - pivot.x);
  const after = Math.atan2(to.y - pivot.y, to.x - pivot.x);
  const turn = toDegrees(after - before);
  if (turn > 180) return turn - 360;
  return turn <= -180 ? turn + 360 : turn;
}
