import type { Vec2 } from '../../geometry/vector.ts';
import type { Deck } from '../../layout/deck.ts';
import { toDeck as kitToDeck, toKit } from '../../rig/deckFrame.ts';
import { type ScreenPoint, toDeck, toScreen, type View } from './view.ts';

/** A view of one deck: kit points go to the screen and back through both frames. */
export interface KitView {
  readonly view: View;
  readonly deck: Pick<Deck, 'kit'>;
}

export const kitToScreen = ({ view, deck }: KitView, spot: Vec2): ScreenPoint =>
  toScreen(view, kitToDeck(deck, spot));

export const screenToKit = ({ view, deck }: KitView, point: ScreenPoint): Vec2 =>
  toKit(deck, toDeck(view, point));

/** A direction on the plan as a unit vector on the screen. */
export function directionOnScreen(kitView: KitView, direction: Vec2): ScreenPoint {
  const a = kitToScreen(kitView, { x: 0, y: 0 });
  const b = kitToScreen(kitView, direction);
  const size = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
}

/** A move on the screen, px, as a move in the kit frame, mm. */
export function moveInKit(kitView: KitView, by: ScreenPoint): Vec2 {
  const a = screenToKit(kitView, { x: 0, y: 0 });
  const b = screenToKit(kitView, by);
  return { x: b.x - a.x, y: b.y - a.y };
}
