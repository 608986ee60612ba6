import { beforeAll, describe, expect, it } from 'vitest';
import { type ClearSpotAnswer, clearSpot } from '../../src/clearance/clearSpot.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { addMic, changeClip, changeMount } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { findStanding } from '../../src/rig/standing/findStanding.ts';
import { cutting, inMasts } from '../report/cantStaySamples.ts';
import { gridSpot } from '../support/spotGrid.ts';
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

/** Whether a mic stands in another. */
const meets = (of: Layout, id: string): boolean =>
  findStanding(buildRig(of), of.deck).some(
    ({ code, about }) => code === 'mic-against-mic' && about.includes(id),
  );

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
    // The mast is 25 to 40 mm thick and the mic less than 80: beside it is a hand's breadth, where no other mic has to be left too.
    if (!meets(layout, id)) expect(answer.cost, piece).toBeLessThan(60);
  }
  expect(clear).toBeGreaterThan(4);
}, 60_000);

describe('two mics that meet', () => {
  const kit = startingKit('large-kit');
  /** The kit with a second mic where the first clip of a drum is, turned round its rim by less than it is thick. */
  const clips = (): { readonly layout: Layout; readonly ids: readonly string[] } => {
    const first = kit.mics.find(({ id }) => id === 'mic-rack-1');
    if (first?.mount.kind !== 'clip') throw new Error('the rack tom has a clip');
    const layout = addMic(kit, { ...first, input: null });
    const second = layout.mics.at(-1)?.id ?? '';
    const turned = changeClip(layout, second, { angle: first.mount.angle + 8 });
    return { layout: turned, ids: [first.id, second] };
  };

  it.each([
    ['on stands', () => cutting(startingKit('five-piece-two-racks'))],
    ['on one rim', clips],
  ])(
    'rule N9: either can be led out of the other %s, to where the engine calls it clear, by little more than a grid finds',
    (_, make) => {
      const { layout, ids } = make();
      const motion = motionIn(layout);
      const rig = buildRig(layout);
      for (const id of ids) {
        expect(meets(layout, id), id).toBe(true);
        // Nothing that moves is why it has to go.
        expect(roomOf(layout, id), id).toBeGreaterThanOrEqual(layout.margin);
        const answer = clearSpot(motion, layout, rig, id);
        if (answer.kind !== 'spot') throw new Error(`a spot for ${id} was expected`);
        const there = changeMount(layout, id, () => answer.mic.mount);
        expect(
          ids.map((each) => meets(there, each)),
          id,
        ).toEqual([false, false]);
        expect(roomOf(there, id)).toBeGreaterThanOrEqual(layout.margin);
        const other = gridSpot({ layout, rig, motion }, id, {
          grids: [{ mm: [10, 30], degrees: [6, 12] }],
          dearest: answer.cost,
        });
        const least = other?.cost ?? answer.cost;
        expect(answer.cost, id).toBeLessThanOrEqual(Math.max(1.1 * least, least + 10));
      }
    },
    240_000,
  );

  it('rule N9: one that is led from elsewhere stands in no other mic there either', () => {
    const { layout, ids } = clips();
    const wide = { ...layout, margin: 80 };
    const motion = motionIn(wide);
    for (const id of ids) {
      expect(roomOf(wide, id), id).toBeLessThan(wide.margin);
      const answer = clearSpot(motion, wide, buildRig(wide), id);
      if (answer.kind !== 'spot') throw new Error(`a spot for ${id} was expected`);
      expect(
        meets(
          changeMount(wide, id, () => answer.mic.mount),
          id,
        ),
        id,
      ).toBe(false);
    }
  }, 60_000);
});
