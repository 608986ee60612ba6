import { expect, it } from 'vitest';
import { againstPlayerIn } from '../../src/clearance/againstPlayer.ts';
import { clearSpot } from '../../src/clearance/clearSpot.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { changeMount } from '../../src/layout/edit/mics.ts';
import type { StandMount } from '../../src/layout/mics/mount.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { startingKit } from './kits.ts';

const kit = startingKit('five-piece-one-rack');

/** A mic of the five-piece moved, and where it is led. */
function ledFrom(name: string, change: Partial<StandMount>) {
  const mic = kit.mics.find((one) => one.name === name);
  if (mic?.mount.kind !== 'stand') throw new Error(`${name} on a stand was expected`);
  const mount = { ...mic.mount, ...change };
  const layout = changeMount(kit, mic.id, () => mount);
  const rig = buildRig(layout);
  const motion = motionOf(layout.player, layout.pieces);
  const answer = clearSpot(motion, layout, rig, mic.id);
  const found = (of: typeof layout) => {
    const placed = buildRig(of).mics.find((one) => one.mic.id === mic.id);
    if (!placed) throw new Error('the mic was expected');
    return { against: againstPlayerIn(of)(placed), room: reachOf(motion, placed).clearance };
  };
  if (answer.kind !== 'spot') return { answer, before: found(layout), after: undefined };
  const there = changeMount(layout, mic.id, () => answer.mic.mount);
  return { answer, before: found(layout), after: found(there) };
}

it('rule N4: a mic in the head is led away from the player', () => {
  const { answer, before, after } = ledFrom('Overhead, hi-hat side', {
    tip: { x: -40, y: 60, z: 1390 },
    base: { x: -700, y: -300 },
  });
  expect(before.against.map(({ code }) => code)).toContain('mic-in-player');
  expect(answer).toMatchObject({ kind: 'spot' });
  expect(after?.against).toEqual([]);
  expect(after?.room).toBeGreaterThanOrEqual(kit.margin);
}, 120_000);
