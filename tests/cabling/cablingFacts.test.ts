import { describe, expect, it } from 'vitest';
import { cablesOf } from '../../src/cabling/cables.ts';
import type { CablingFact } from '../../src/cabling/cablingFact.ts';
import { cablingFacts, createCablingFacts } from '../../src/cabling/cablingFacts.ts';
import {
  usualKick,
  usualPedal,
  usualThrone,
} from '../../src/layout/catalogue/defaults/usualPieces.ts';
import type { Stairs } from '../../src/layout/deck.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { PlacedMic } from '../../src/rig/placed.ts';
import { bareLayout, hangingMic, startingLayouts, withMics } from './scenes.ts';

const stocked: Layout = {
  ...bareLayout,
  cabling: { ...bareLayout.cabling, stock: [{ length: 10_000, count: 20 }] },
};
function factsOf(layout: Layout, mics: readonly PlacedMic[]): readonly CablingFact[] {
  const [placed, rig] = withMics(layout, mics);
  return cablingFacts(placed, cablesOf(placed, rig));
}
const mic = hangingMic('mic', { x: 0, y: 500 }, 1);

describe('facts about the cables', () => {
  it('are none when everything is plugged, reached and clear', () => {
    expect(factsOf(stocked, [mic, hangingMic('other', { x: 500, y: 500 }, 2)])).toEqual([]);
  });

  it('K1: a start in the foot space has no way that keeps clear; its place is the start, in the kit frame', () => {
    const pedal = { ...usualPedal('pedal'), x: 0, y: 400 };
    const kit = { x: 300, y: -400, turn: 90 };
    const layout = { ...stocked, pieces: [pedal], deck: { ...stocked.deck, kit } };
    const [fact, ...others] = factsOf(layout, [hangingMic('mic', { x: 0, y: 450 }, 1)]);
    expect(others).toEqual([]);
    expect(fact?.code).toBe('run-no-way');
    expect(fact?.ids).toEqual(['mic', 'pedal']);
    expect(fact?.place?.x).toBeCloseTo(0, 9);
    expect(fact?.place?.y).toBeCloseTo(450, 9);
    expect(fact?.place?.z).toBe(0);
  });

  it('K2: how many more of which length have to be brought, and for whom', () => {
    const stock = [
      { length: 2000, count: 5 },
      { length: 5000, count: 1 },
      { length: 20_000, count: 0 },
    ];
    const layout = { ...stocked, cabling: { ...stocked.cabling, stock } };
    const mics = [1, 2, 3].map((i) => hangingMic(`mic-${i}`, { x: 0, y: 300 * i }, i));
    const facts = factsOf(layout, mics).filter(({ code }) => code === 'stock-missing');
    expect(facts).toHaveLength(1);
    expect(facts[0]).toMatchObject({ numbers: { length: 5000, listed: 6 } });
    expect(facts[0]?.numbers.count).toBe(facts[0]?.ids.length);
    const [none] = factsOf(bareLayout, [mic]);
    expect(none).toMatchObject({ code: 'stock-missing', ids: ['mic'], numbers: { listed: 0 } });
  });

  it('K2: a join, its two cables the longer first', () => {
    const cabling = { ...stocked.cabling, stock: [{ length: 3000, count: 2 }] };
    const [fact, ...others] = factsOf({ ...stocked, cabling }, [mic]);
    expect(others).toEqual([]);
    expect(fact).toMatchObject({ code: 'run-joined', numbers: { longer: 3000, shorter: 3000 } });
    expect(fact?.numbers.needed).toBeGreaterThan(3000);
  });

  it('K10: a multicore of 100 m matters to a ribbon, one of 15 m to nobody', () => {
    const [ribbon] = [mic].map((placed) => ({
      ...placed,
      micClass: { ...placed.micClass, type: 'ribbon' as const },
    }));
    if (!ribbon) throw new Error('a mic was expected');
    const far = { ...stocked, box: { ...stocked.box, tail: 100_000 } };
    const [fact] = factsOf(far, [ribbon]);
    expect(fact?.code).toBe('run-signal');
    expect(fact?.numbers.lossAt20k).toBeGreaterThan(0.5);
    expect(fact?.numbers.levelLoss).toBeLessThan(0.5);
    expect(factsOf(far, [mic])).toEqual([]);
    expect(factsOf(stocked, [ribbon])).toEqual([]);
  });

  it('K3: not plugged, plugged into an input that is not there, two on one input', () => {
    const facts = factsOf(stocked, [
      hangingMic('loose', { x: 0, y: 0 }, null),
      hangingMic('far', { x: 0, y: 300 }, 9),
      hangingMic('one', { x: 0, y: 600 }, 4),
      hangingMic('two', { x: 0, y: 900 }, 4),
      hangingMic('three', { x: 0, y: 1200 }, 4),
    ]);
    expect(facts.map(({ code, ids, numbers }) => [code, ids, numbers])).toEqual([
      ['run-unplugged', ['loose'], {}],
      ['input-beyond-box', ['far'], { input: 9, inputs: 8 }],
      ['input-twice', ['one', 'two', 'three'], { input: 4 }],
    ]);
  });

  it('K4: more mics than inputs', () => {
    const mics = Array.from({ length: 9 }, (_, i) =>
      hangingMic(`mic-${i}`, { x: 0, y: 100 * i }, i < 8 ? i + 1 : null),
    );
    const facts = factsOf(stocked, mics);
    const [fact] = facts.filter(({ code }) => code === 'more-mics-than-inputs');
    expect(fact?.numbers).toEqual({ mics: 9, inputs: 8 });
    expect(factsOf(stocked, mics.slice(1)).map(({ code }) => code)).toEqual(['run-unplugged']);
  });

  it('K5: a cable that crosses the way to the stairs, in the kit frame', () => {
    const layout: Layout = {
      ...stocked,
      deck: { ...stocked.deck, stairs: [{ edge: 'back', offset: 0, width: 900 }] },
      box: { ...stocked.box, y: -1000 },
    };
    const facts = factsOf(layout, [hangingMic('far', { x: 1500, y: -1000 }, 2), mic]);
    expect(facts.map(({ code, ids }) => [code, ids])).toEqual([['lane-crossed', ['far']]]);
    expect(facts[0]?.place?.x).toBeCloseTo(0, 6);
    expect(facts[0]?.numbers.length).toBeGreaterThan(599);
  });

  it('K5: a bundle that crosses is one fact; cables before other stairs are one of theirs', () => {
    const stairs = [
      { edge: 'back', offset: 0, width: 900 },
      { edge: 'right', offset: 1000, width: 900 },
    ] as const;
    const layout: Layout = {
      ...stocked,
      deck: { ...stocked.deck, stairs: [...stairs] },
      box: { ...stocked.box, y: -1000 },
    };
    const mics = [
      hangingMic('one', { x: 1500, y: -1000 }, 2),
      hangingMic('two', { x: 1500, y: -1300 }, 3),
    ];
    const facts = factsOf(layout, mics).map(({ code, ids }) => [code, ids]);
    expect(facts).toEqual([['lane-crossed', ['one', 'two']]]);
    const away = { ...layout, box: { ...layout.box, x: 2000, y: 1700, turn: 270 } };
    const near = [
      hangingMic('near', { x: 2800, y: 500 }, 1),
      hangingMic('off', { x: 1500, y: 1000 }, 2),
    ];
    expect(factsOf(away, near).map(({ code, ids }) => [code, ids])).toEqual([
      ['stairs-crossed', ['near']],
    ]);
  });

  it('K5: a cable that crosses the lane is not told again where it lies before its stairs', () => {
    const layout: Layout = {
      ...stocked,
      deck: { ...stocked.deck, stairs: [{ edge: 'back', offset: 0, width: 900 }] },
      box: { ...stocked.box, y: -1700 },
    };
    // The lane is 600 mm wide, the stairs 900: one cable lies across both, the other ends beside the lane, before the stairs.
    const across = hangingMic('across', { x: 1500, y: -1700 }, 1);
    const beside = hangingMic('beside', { x: -380, y: -1700 }, 2);
    const told = (mics: readonly PlacedMic[]) =>
      factsOf(layout, mics).map(({ code, ids }) => [code, ids]);
    expect(told([across])).toEqual([['lane-crossed', ['across']]]);
    expect(told([beside])).toEqual([['stairs-crossed', ['beside']]]);
    expect(told([across, beside])).toEqual([
      ['lane-crossed', ['across']],
      ['stairs-crossed', ['beside']],
    ]);
  });

  it('K5: are told with a memory as without one, whatever changes', () => {
    const stairs: readonly Stairs[] = [
      { edge: 'back', offset: 0, width: 900 },
      { edge: 'left', offset: 0, width: 900 },
    ];
    const start: Layout = {
      ...stocked,
      pieces: [usualThrone('throne')],
      deck: { ...stocked.deck, stairs: [...stairs] },
      box: { ...stocked.box, x: 900, y: -700 },
    };
    const edits: readonly ((layout: Layout) => Layout)[] = [
      (l) => l,
      (l) => ({ ...l, pieces: [{ ...usualThrone('throne'), diameter: 900 }] }),
      (l) => ({ ...l, pieces: [] }),
      (l) => ({ ...l, deck: { ...l.deck, kit: { x: 200, y: -300, turn: 30 } } }),
      (l) => ({ ...l, deck: { ...l.deck, stairs: stairs.slice(0, 1) } }),
      (l) => ({ ...l, box: { ...l.box, x: -900 } }),
    ];
    const remembering = createCablingFacts();
    const told = new Set<string>();
    let layout = start;
    for (const edit of edits) {
      layout = edit(layout);
      const mics = [-800, 0, 800].map((x, i) => hangingMic(`mic-${i}`, { x, y: -600 }, i + 1));
      const [placed, rig] = withMics(layout, mics);
      const cables = cablesOf(placed, rig);
      const facts = remembering(placed, cables);
      expect(facts).toEqual(cablingFacts(placed, cables));
      told.add(JSON.stringify(facts.filter(({ code }) => code.endsWith('-crossed'))));
    }
    expect(told.size).toBeGreaterThan(3);
  });

  it('K9: stairs beyond the end of their edge, which lead nowhere', () => {
    const stairs = (offset: number): Layout => ({
      ...stocked,
      deck: { ...stocked.deck, stairs: [{ edge: 'back', offset, width: 900 }] },
    });
    expect(factsOf(stairs(2550), [])).toEqual([]);
    const [fact, ...others] = factsOf(stairs(2650), []);
    expect(others).toEqual([]);
    expect(fact).toMatchObject({ code: 'stairs-off-edge', ids: [], numbers: { beyond: 100 } });
    // Wholly beside the deck they are no way out: nothing crosses a lane to them.
    const far = { ...stairs(9000), box: { ...stocked.box, y: -1000 } };
    const crossing = factsOf(far, [hangingMic('far', { x: 2500, y: -1000 }, 2)]);
    expect(crossing.map(({ code }) => code)).toEqual(['stairs-off-edge']);
  });

  it('K8: what stands in the way to the stairs, once each, and how far aside it must go', () => {
    const layout: Layout = {
      ...stocked,
      pieces: [usualThrone('throne')],
      deck: { ...stocked.deck, stairs: [{ edge: 'back', offset: 0, width: 900 }] },
    };
    const drum = (id: string, x: number, y: number) => ({ ...usualKick(id), x, y });
    const stands = drum('in', 400, -1000);
    const facts = factsOf({ ...layout, pieces: [...layout.pieces, stands] }, []);
    expect(facts.map(({ code, ids }) => [code, ids])).toEqual([['lane-blocked', ['in']]]);
    const aside = facts[0]?.numbers.overlap ?? 0;
    expect(aside).toBeGreaterThan(0);
    const moved = (by: number) =>
      factsOf({ ...layout, pieces: [...layout.pieces, drum('in', 400 + by, -1000)] }, []);
    expect(moved(aside - 1).map(({ code }) => code)).toEqual(['lane-blocked']);
    expect(moved(aside + 1)).toEqual([]);
    const box = factsOf({ ...layout, box: { ...layout.box, x: 100, y: -1000 } }, []);
    expect(box).toMatchObject([{ code: 'lane-blocked', ids: [], place: { z: 0 } }]);
  });

  it('K6: a box in the kick', () => {
    const kick = { ...usualKick('kick'), x: 0, y: 0 };
    const layout = { ...stocked, pieces: [kick], box: { ...stocked.box, x: 100, y: 50 } };
    const facts = factsOf(layout, [hangingMic('mic', { x: 2000, y: 0 }, 1)]);
    expect(facts.map(({ code }) => code)).toEqual(['run-no-way', 'box-in-obstacle']);
    expect(facts[1]).toMatchObject({ ids: ['kick'], place: { x: 100, y: 50, z: 0 } });
    const beside = { ...layout, box: { ...layout.box, x: -2000 } };
    expect(factsOf(beside, [])).toEqual([]);
  });

  it('K7: a box beside a raised deck; beside a marked area it is none', () => {
    const layout = { ...stocked, box: { ...stocked.box, x: -3400 } };
    const [fact] = factsOf(layout, [mic]);
    expect(fact).toMatchObject({ code: 'box-off-deck', ids: [], numbers: { drop: 400 } });
    const flat = { ...layout, deck: { ...layout.deck, height: 0 } };
    expect(factsOf(flat, [mic])).toEqual([]);
  });

  it('every starting kit has clear ways for all its cables and needs no cable it does not carry', () => {
    for (const layout of startingLayouts) {
      const facts = cablingFacts(layout, cablesOf(layout, buildRig(layout)));
      expect(facts.filter(({ code }) => code !== 'lane-crossed')).toEqual([]);
    }
  });
});
