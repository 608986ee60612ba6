import { beforeAll, describe, expect, it } from 'vitest';
import { type ClearSpotAnswer, clearSpot } from '../../src/clearance/clearSpot.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { changeMount } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { findStanding } from '../../src/rig/standing/findStanding.ts';
import { inMasts } from '../report/cantStaySamples.ts';
import { startingKit } from './kits.ts';

/** What a mic of a layout stands in. */
const standsIn = (layout: Layout, id: string) =>
  findStanding(buildRig(layout), layout.deck).filter(
    ({ code, about }) =>
      about[0] === id && (code === 'mic-in-shell' || code === 'boom-through-piece'),
  );

interface Sunk {
  readonly layout: Layout;
  readonly mic: string;
  /** How far it was pushed along its axis, mm. */
  readonly by: number;
}

/** A layout whose mic is pushed along its axis into what it looks at. */
function pushed(layout: Layout, mic: Mic, by: number): readonly Sunk[] {
  const { mount } = mic;
  if (mount.kind !== 'stand') return [];
  const { axis } = placeMic(mic, layout);
  const { x, y, z } = mount.tip;
  const tip = { x: x + by * axis.x, y: y + by * axis.y, z: z + by * axis.z };
  const changed = changeMount(layout, mic.id, () => ({ ...mount, tip }));
  return standsIn(changed, mic.id).length > 0 ? [{ layout: changed, mic: mic.id, by }] : [];
}

const motionIn = ({ player, pieces }: Layout) => motionOf(player, pieces);
const roomOf = (layout: Layout, id: string): number =>
  Math.min(
    ...layout.mics
      .filter((mic) => mic.id === id)
      .map((mic) => reachOf(motionIn(layout), placeMic(mic, layout)).clearance),
  );

describe('a mic that stands in a drum or cymbal', () => {
  let all: readonly (Sunk & { readonly answer: ClearSpotAnswer })[] = [];
  beforeAll(() => {
    all = ['five-piece-two-racks', 'four-piece-jazz']
      .map(startingKit)
      .flatMap((layout) =>
        layout.mics.flatMap((mic) => [20, 60, 120].flatMap((by) => pushed(layout, mic, by))),
      )
      .map((sunk) => ({
        ...sunk,
        answer: clearSpot(motionIn(sunk.layout), sunk.layout, buildRig(sunk.layout), sunk.mic),
      }));
  }, 240_000);

  it('rule N4: is led out of all that it stands in, to where the engine calls it clear', () => {
    expect(all.length).toBeGreaterThan(4);
    for (const { layout, mic, answer } of all) {
      if (answer.kind !== 'spot') throw new Error(`a spot for ${mic} was expected`);
      const there = changeMount(layout, mic, () => answer.mic.mount);
      expect(standsIn(there, mic), mic).toEqual([]);
      expect(roomOf(there, mic)).toBeGreaterThanOrEqual(layout.margin);
    }
    // By their room alone some of them would have been called clear.
    expect(all.some(({ layout, mic }) => roomOf(layout, mic) >= layout.margin)).toBe(true);
  });

  it('rule N5: costs no more than to pull it back to where it was clear, but for what a spot may be dearer', () => {
    for (const { mic, by, answer } of all) {
      if (answer.kind !== 'spot') throw new Error(`a spot for ${mic} was expected`);
      expect(answer.cost, mic).toBeLessThanOrEqual(Math.max(1.08 * by, by + 8) + 1);
    }
  });
});

it('rule N4: a mic against the hardware of a piece is led out of there, though nothing that moves is near', () => {
  const all = inMasts(startingKit('large-kit'));
  expect(all.length).toBeGreaterThan(6);
  let clear = 0;
  for (const { layout, id, piece } of all) {
    const isAgainst = (of: Layout): boolean =>
      findStanding(buildRig(of), of.deck).some(
        ({ code, about }) => code === 'mic-against-stand' && about[0] === id,
      );
    expect(isAgainst(layout), piece).toBe(true);
    if (roomOf(layout, id) >= layout.margin) clear += 1;
    const answer = clearSpot(motionIn(layout), layout, buildRig(layout), id);
    if (answer.kind !== 'spot') throw new Error(`a spot beside ${piece} was expected`);
    const there = changeMount(layout, id, () => answer.mic.mount);
    expect(isAgainst(there), piece).toBe(false);
    // The mast is 25 to 40 mm thick and the mic less than 80: beside it is a hand's breadth.
    expect(answer.cost, piece).toBeLessThan(60);
  }
  expect(clear).toBeGreaterThan(4);
}, 60_000);
