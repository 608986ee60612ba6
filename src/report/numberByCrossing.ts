import { leastCrossing } from '../cabling/leastCrossing.ts';
import { setInput } from '../layout/edit/mics.ts';
import type { Layout } from '../layout/layout.ts';
import { buildRig } from '../rig/buildRig.ts';

/** The layout with every mic plugged where the cables cross least; the same one where they are. */
export const numberByCrossing = (layout: Layout): Layout =>
  [...leastCrossing(layout, buildRig(layout))].reduce(
    (plugged, [mic, input]) => setInput(plugged, mic, input),
    layout,
  );
