import { describe, expect, it } from 'vitest';
import { clearSpot } from '../../src/clearance/clearSpot.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { startingKit } from './kits.ts';

/** What a spot has over the margin before the search takes it. */
const SPARE = 0.2;

describe('rule N7: the most room where no spot is clear', () => {
  it.each([
    ['five-piece-two-racks', 'mic-rack-1'],
    ['five-piece-two-racks', 'mic-floor-tom'],
    ['large-kit', 'mic-snare'],
  ])(
    '%s, %s: a margin a hair smaller has a clear spot, and where it is has no more',
    (key, id) => {
      const kit = startingKit(key);
      const motion = motionOf(kit.player, kit.pieces);
      const ask = (margin: number) => {
        const layout = { ...kit, margin };
        return clearSpot(motion, layout, buildRig(layout), id);
      };
      const none = ask(250);
      if (none.kind !== 'none' || none.most === undefined) throw new Error('no spot was expected');
      const mic = kit.mics.find((each) => each.id === id);
      if (!mic) throw new Error('the kit has the mic');
      expect(none.most).toBeGreaterThan(reachOf(motion, placeMic(mic, kit)).clearance);
      expect(none.most).toBeLessThan(250);
      const spot = ask(none.most - 2 * SPARE);
      expect(spot.kind).toBe('spot');
    },
    60_000,
  );
});
