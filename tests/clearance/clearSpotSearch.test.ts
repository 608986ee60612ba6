import { describe, expect, it } from 'vitest';
import { clearSpot } from '../../src/clearance/clearSpot.ts';
import { motionOf } from '../../src/clearance/micClearance.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { seededKits } from '../support/randomKit.ts';
import { GRIDS, gridSpot } from '../support/spotGrid.ts';

describe('rule N5: a search that comes to the end of its budget', () => {
  it('finds the far spot of a boom that a grid finds, at most 10 % or 10 mm dearer', () => {
    const layout = seededKits(10, 301)[3];
    if (!layout) throw new Error('a kit was expected');
    const rig = buildRig(layout);
    const motion = motionOf(layout.player, layout.pieces);
    const answer = clearSpot(motion, layout, rig, 'm2');
    const other = gridSpot({ layout, rig, motion }, 'm2', { grids: GRIDS, dearest: 480 });
    if (answer.kind !== 'spot' || !other) throw new Error('two spots were expected');
    expect(answer.cost).toBeLessThanOrEqual(Math.max(1.1 * other.cost, other.cost + 10));
    expect(answer.proven).toBe(false);
  }, 240_000);
});
