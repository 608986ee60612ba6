import { describe, expect, it } from 'vitest';
import { clearSpot } from '../../src/clearance/clearSpot.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { gridSpot } from '../support/spotGrid.ts';
import { startingKit } from './kits.ts';

/** Finer than the look all round, and not on its places. */
const FINE = [
  { mm: [28, 252], degrees: [14, 182] },
  { mm: [11, 88], degrees: [7, 42] },
] as const;

describe('rule N7: the most room where no spot is clear', () => {
  it.each([
    ['five-piece-two-racks', 'mic-rack-1'],
    ['five-piece-two-racks', 'mic-floor-tom'],
    ['large-kit', 'mic-snare'],
  ])(
    '%s, %s: a margin as wide has a clear spot, where it is has no more, and a grid has hardly more',
    (key, id) => {
      const kit = startingKit(key);
      const motion = motionOf(kit.player, kit.pieces);
      const sceneOf = (margin: number) => {
        const layout = { ...kit, margin };
        return { layout, motion, rig: buildRig(layout) };
      };
      const ask = (margin: number) => {
        const { layout, rig } = sceneOf(margin);
        return clearSpot(motion, layout, rig, id);
      };
      const none = ask(400);
      if (none.kind !== 'none' || none.most === undefined) throw new Error('no spot was expected');
      const mic = kit.mics.find((each) => each.id === id);
      if (!mic) throw new Error('the kit has the mic');
      expect(none.most).toBeGreaterThan(reachOf(motion, placeMic(mic, kit)).clearance);
      expect(none.most).toBeLessThan(400);
      expect(ask(none.most).kind).toBe('spot');
      const more = gridSpot(sceneOf(none.most + 2), id, { grids: FINE, dearest: 500 });
      expect(more).toBeUndefined();
    },
    240_000,
  );
});
