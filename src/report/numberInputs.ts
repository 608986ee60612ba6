import { setInput } from '../layout/edit/mics.ts';
import type { Layout } from '../layout/layout.ts';
import { inputList } from '../patch/inputList.ts';
import { plugByList } from '../patch/plugByList.ts';
import { buildRig } from '../rig/buildRig.ts';

/**
 * Plugs every mic into the box, numbered from 1 in the order of the input list: festival order, unless another was set by hand.
 * Mics beyond the box's inputs are numbered on: that there are too many is for a finding to say.
 */
export const numberInputs = (layout: Layout): Layout =>
  [...plugByList(inputList(buildRig(layout), layout.patch))].reduce(
    (plugged, [mic, input]) => setInput(plugged, mic, input),
    layout,
  );
