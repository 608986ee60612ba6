import { describe, expect, test } from 'vitest';
import { createClearances } from '../../../../src/clearance/clearances.ts';
import { STARTING_KITS } from '../../../../src/layout/catalogue/kits/startingKits.ts';
import { MIC_CLASSES, usualMounts } from '../../../../src/layout/catalogue/micClasses.ts';
import {
  micGroups,
  micSources,
  offeredMics,
} from '../../../../src/layout/catalogue/offered/offeredMics.ts';
import { addMic } from '../../../../src/layout/edit/mics.ts';
import type { Layout } from '../../../../src/layout/layout.ts';
import type { Mic } from '../../../../src/layout/mics/mic.ts';
import { checkLayout } from '../../../../src/layout/read.ts';
import { buildRig } from '../../../../src/rig/buildRig.ts';
import { placeMic } from '../../../../src/rig/placeMic.ts';
import { findStanding } from '../../../../src/rig/standing/findStanding.ts';

const kits = STARTING_KITS.filter(({ key }) => key !== 'empty-deck').map(
  ({ key, make }): readonly [string, Layout] => [key, { ...make(key), mics: [] }],
);

/** The first mic offered that is clear, reached by its stand and in nothing's way. */
function firstGood(layout: Layout, hears: readonly string[]): Mic | undefined {
  const clearances = createClearances();
  for (const mic of offeredMics(layout, hears)) {
    const placed = placeMic(mic, layout);
    if (placed.stand && placed.stand.beyondReach > 0) continue;
    if (clearances(layout, [placed])[0]?.verdict !== 'clear') continue;
    const rig = buildRig({ ...layout, mics: [...layout.mics, mic] });
    const inTheWay = findStanding(rig, layout.deck).some(({ about }) => about.includes(mic.id));
    if (!inTheWay) return mic;
  }
  return undefined;
}

describe.each(kits)('%s without its mics', (_, bare) => {
  test('every group is offered a clear place, one after the other', () => {
    let layout: Layout = bare;
    for (const { name, hears } of micGroups(bare)) {
      const mic = firstGood(layout, hears);
      expect([name, mic?.hears]).toEqual([name, hears]);
      if (mic) layout = addMic(layout, mic);
    }
    expect(checkLayout(layout)).toEqual({ ok: true, layout });
    expect(layout.mics.map(({ input }) => input)).toEqual(
      layout.mics.map((_mic, index) => (index < layout.box.inputs ? index + 1 : null)),
    );
  });

  test('every drum, the hi-hat and the ride have a group, the cymbals two', () => {
    const groups = micGroups(bare);
    for (const { id, kind } of bare.pieces) {
      const own = groups.filter(({ hears }) => hears.length === 1 && hears[0] === id);
      const expected = ['kick', 'snare', 'rackTom', 'floorTom', 'hiHat', 'ride', 'percussion'];
      expect([id, own.length]).toEqual([id, expected.includes(kind) ? 1 : 0]);
    }
    const over = groups.filter(({ name }) => name.startsWith('Overhead'));
    expect(over.map(({ hears }) => hears.length > 1)).toEqual([true, true]);
  });
});

test('what is offered stands at whole mm and points at half degrees, so that what was found clear is what is kept', () => {
  const isWhole = (...values: readonly number[]) => values.every(Number.isInteger);
  let looked = 0;
  for (const [, bare] of kits) {
    for (const { name, hears } of micSources(bare)) {
      for (const { id } of MIC_CLASSES) {
        for (const { mount } of offeredMics(bare, hears, id)) {
          if (mount.kind === 'stand') {
            const { base, tip, azimuth, pitch } = mount;
            const places = [base.x, base.y, tip.x, tip.y, tip.z];
            expect(isWhole(...places, 2 * azimuth, 2 * pitch), `${name} ${places}`).toBe(true);
            looked += 1;
          } else if (mount.kind === 'plateOnDeck') {
            expect(isWhole(mount.x, mount.y), `${name} on a plate`).toBe(true);
          }
        }
      }
    }
  }
  expect(looked).toBeGreaterThan(500);
});

test('a mic is named after its drum as a mic, never as a second drum', () => {
  for (const [, bare] of kits) {
    let layout: Layout = bare;
    for (const { hears } of [...micGroups(bare), ...micGroups(bare)]) {
      const mic = offeredMics(layout, hears).next().value;
      if (mic) layout = addMic(layout, mic);
    }
    const pieces = new Set(layout.pieces.map(({ name }) => name));
    for (const { name, hears } of layout.mics) {
      const own = layout.pieces.find(({ id }) => id === hears[0])?.name;
      if (hears.length === 1) expect(name).toMatch(new RegExp(`^${own} mic( \\d+)?$`));
      expect(pieces.has(name)).toBe(false);
    }
    expect(new Set(layout.mics.map(({ name }) => name)).size).toBe(layout.mics.length);
  }
});

describe('what is offered', () => {
  const layout = kits[2]?.[1];
  if (!layout) throw new Error('no kit');
  const first = (id: string) => offeredMics(layout, [id]).next().value;

  test('a kick with a port: the large dynamic 50 to 100 mm inside, then the plate', () => {
    const mics = [...offeredMics(layout, ['kick'])];
    expect(mics[0]).toMatchObject({ micClass: 'kick-dynamic', mount: { stand: 'tripodLow' } });
    const front = 1060 + 228.6;
    const tips = mics.flatMap(({ mount }) => (mount.kind === 'stand' ? [front - mount.tip.y] : []));
    expect(tips.slice(0, 3).map(Math.round)).toEqual([75, 100, 50]);
    // All others are beside it, in front of the head.
    expect(tips.slice(3).every((inside) => inside <= -60)).toBe(true);
    expect(mics.some(({ mount }) => mount.kind === 'plateInKick')).toBe(true);
  });

  test('a kick without a port: in front of its head', () => {
    const [, jazz] = kits[0] ?? [];
    const mic = jazz && offeredMics(jazz, ['kick']).next().value;
    expect(mic?.mount.kind === 'stand' && mic.mount.tip.y).toBeGreaterThan(1013 + 177.8);
  });

  test('a tom: a compact dynamic on a rubber clip, on the audience side', () => {
    expect(first('rack-1')).toMatchObject({
      micClass: 'compact-dynamic',
      mount: { kind: 'clip', drum: 'rack-1', material: 'rubber', angle: 91 },
    });
  });

  test('a snare: over the edge between hi-hat and rack tom', () => {
    const mount = first('snare')?.mount;
    if (mount?.kind !== 'stand') throw new Error('a stand was expected');
    const angle = (Math.atan2(mount.tip.y - 440, mount.tip.x + 70) * 180) / Math.PI;
    // The hi-hat stands at 159 degrees from the snare, the first rack tom at 80.
    expect(angle).toBeGreaterThan(100);
    expect(angle).toBeLessThan(140);
  });

  test('overheads hang 600 to 1000 mm above the highest cymbal they hear', () => {
    for (const { mount } of offeredMics(layout, ['crash-1', 'hi-hat'])) {
      if (mount.kind !== 'stand') throw new Error('a stand was expected');
      expect(mount.tip.z - 1130).toBeGreaterThanOrEqual(600);
      expect(mount.tip.z - 1130).toBeLessThanOrEqual(1000);
    }
  });

  test('a chosen class comes on its usual mounts only', () => {
    for (const micClass of MIC_CLASSES) {
      const mics = [...offeredMics(layout, ['floor'], micClass.id)];
      for (const mic of mics) {
        const { mount } = mic;
        expect(mic.micClass).toBe(micClass.id);
        const choice = mount.kind === 'stand' ? mount.stand : mount.kind;
        expect(usualMounts(micClass)).toContain(choice);
      }
    }
  });

  test('a throne, a pedal and an unknown piece are offered nothing', () => {
    for (const id of ['throne', 'pedal-kick', 'nobody']) {
      expect([...offeredMics(layout, [id])]).toEqual([]);
    }
  });
});
