import type { ReactNode } from 'react';
import { Group } from 'react-konva/es/ReactKonvaCore.js';
import type { Deck } from '../../layout/deck.ts';
import { axesOf, originOf, type View } from '../view/view.ts';

/** What is drawn inside is in the deck frame, mm, y toward the audience. */
export function DeckFrame({
  view,
  children,
}: {
  readonly view: View;
  readonly children: ReactNode;
}) {
  const origin = originOf(view);
  const axes = axesOf(view);
  return (
    <Group x={origin.x} y={origin.y} scaleX={axes.x} scaleY={axes.y}>
      {children}
    </Group>
  );
}

/** Inside a deck frame: what is drawn inside is in the kit frame. */
export function KitFrame({
  kit,
  children,
}: {
  readonly kit: Deck['kit'];
  readonly children: ReactNode;
}) {
  return (
    <Group x={kit.x} y={kit.y} rotation={kit.turn}>
      {children}
    </Group>
  );
}
