import { useEffect } from 'react';
import { type Vec2, type Vec3, vec } from '../../geometry/vector.ts';
import type { Surface } from '../../rig/surface.ts';
import type { ViewControls } from '../view/useView.ts';
import type { Bounds } from '../view/view.ts';
import type { MicFocus } from './micFocus.ts';

/** Free ground round a move, mm. */
const ROUND = 90;

/** What must be seen of a move: the whole way of the arm, or the swinging cymbal, and the mic. In the frame of the drawing. */
export function moveExtent(
  { sweep, swinging, place }: Pick<MicFocus, 'sweep' | 'swinging' | 'place'>,
  spotOf: (point: Vec3) => Vec2<'deck'>,
): Bounds | null {
  const spots = [
    ...(sweep?.positions ?? []).flatMap(({ elbow, grip, butt, tip }) => [elbow, grip, butt, tip]),
    ...(swinging ? roundAbout(swinging) : []),
    ...(place?.ends ?? []),
  ].map(spotOf);
  if (spots.length === 0) return null;
  const xs = spots.map(({ x }) => x);
  const ys = spots.map(({ y }) => y);
  return {
    left: Math.min(...xs) - ROUND,
    right: Math.max(...xs) + ROUND,
    back: Math.min(...ys) - ROUND,
    front: Math.max(...ys) + ROUND,
  };
}

/** However a cymbal swings about its centre, it stays between these points. */
const roundAbout = ({ centre: { x, y, z }, radius }: Surface): readonly Vec3[] =>
  [-radius, radius].flatMap((by) => [vec(x + by, y, z), vec(x, y + by, z), vec(x, y, z + by)]);

/** Brings a move into view, large, when it is opened or its drawing gets another size; what the user does with the view then stays. */
export function useShowMove(
  opened: string | null,
  focus: MicFocus | null,
  spotOf: (point: Vec3) => Vec2<'deck'>,
  { show, view: { size } }: ViewControls,
): void {
  // Only opening a move and another size move the view, not what is dragged or played then.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    const extent = opened !== null && focus ? moveExtent(focus, spotOf) : null;
    if (extent) show(extent);
  }, [opened, size.width, size.height]);
}
