import { useCallback, useState } from 'react';
import type { Vec2 } from '../geometry/vector.ts';
import { type KitView, screenToKit } from './view/kitView.ts';
import type { ScreenPoint } from './view/view.ts';

/** The spot of the plan whose stick floor is told: that of the last tap while the floor was drawn. */
export interface FloorSpot {
  /** Kit frame, mm; null: none was tapped since the floor is drawn. */
  readonly spot: Vec2 | null;
  ask(at: ScreenPoint, kitView: KitView): void;
}

export function useFloorSpot(isDrawn: boolean): FloorSpot {
  const [spot, setSpot] = useState<Vec2 | null>(null);
  if (!isDrawn && spot !== null) setSpot(null);
  const ask = useCallback(
    (at: ScreenPoint, kitView: KitView) => {
      if (isDrawn) setSpot(screenToKit(kitView, at));
    },
    [isDrawn],
  );
  return { spot, ask };
}
