import { convexHull } from '../geometry/convexPolygon.ts';
import { grown } from '../geometry/grow.ts';
import { holds } from '../geometry/plan.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import { BOX_DEPTH, boxCorners, INPUT_PITCH, inputsInRow, onBox } from '../rig/boxShape.ts';
import type { Mm } from '../units/quantity.ts';
import { deckRectangle } from './deckFloor.ts';
import type { Obstacle } from './obstacle.ts';

/** From the deck up to an input. */
export const INPUT_HEIGHT: Mm = 60;
/** What a plug and the bend of its cable take in front of the box. */
const PLUG_ROOM: Mm = 100;

/** True when the box stands on the deck: its centre does. */
export const boxIsOnDeck = ({ box, deck }: Layout): boolean => holds(deckRectangle(deck), box);

/** Where a cable is plugged, and where it comes straight up to it from. Deck frame. */
export interface InputPlace {
  readonly spot: Vec2<'deck'>;
  readonly before: Vec2<'deck'>;
}

/**
 * B3 The box is entered from the side of its inputs only: straight on, over the last 100 mm (plug and bend), or over the
 *    distance to keep where that is more.
 * B4 A run without an input, or with one the box does not have, leads to the middle of that side.
 */
export function inputPlace({ box, cabling }: Layout, input: number | null): InputPlace {
  const row = inputsInRow(box);
  const isThere = input !== null && input <= box.inputs;
  const right = isThere ? (((input - 1) % row) - (row - 1) / 2) * INPUT_PITCH : 0;
  const front = BOX_DEPTH / 2;
  // 1 mm more than the distance to keep: the run's last corner stands clear of the box's grown outline.
  const room = Math.max(PLUG_ROOM, cabling.keepAway + 1);
  return { spot: onBox(box, front, right), before: onBox(box, front + room, right) };
}

/** The box as an obstacle for cables on the same floor; none when it stands beside the deck. */
export const boxObstacle = (layout: Layout): Obstacle[] =>
  boxIsOnDeck(layout) ? [obstacleOfBox(layout)] : [];

/** The box as an obstacle, wherever it stands. */
export function obstacleOfBox({ box, cabling }: Layout): Obstacle {
  // Grown while it is square to the axes, so that its sides keep exactly the distance, then turned.
  const centred = { ...box, x: 0, y: 0, turn: 0 };
  const turned = (points: readonly Vec2<'deck'>[]) => points.map((p) => onBox(box, p.x, p.y));
  const corners = boxCorners(centred);
  const body = convexHull<'deck'>(turned(corners));
  const outline = convexHull<'deck'>(turned(grown(corners, cabling.keepAway)));
  if (!body || !outline) throw new RangeError('A box has a width and a depth.');
  return { kind: 'box', owner: null, body, outline };
}
