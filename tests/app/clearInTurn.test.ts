import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { clearInTurn } from '../../src/app/clearInTurn.ts';
import type { ClearAnswer, ClearedMic } from '../../src/app/clearQuestion.ts';
import { createClearances } from '../../src/clearance/clearances.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { addMic, changeMount } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { MicClass } from '../../src/layout/mics/micClass.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { judgementCounts } from '../../src/report/judgement.ts';
import { micsToLead } from '../../src/report/needsSpot.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { createStandingFinder } from '../../src/rig/standing/findStanding.ts';
import { TOUCHING } from '../../src/rig/standing/standing.ts';
import { seededKits } from '../support/randomKit.ts';

const kit = (): Layout => {
  const found = STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks')?.make('kit');
  if (!found) throw new Error('the five-piece kit is a starting kit');
  return found;
};
const verdicts = (layout: Layout) =>
  new Map(
    createClearances()(layout, buildRig(layout).mics).map(({ mic, verdict }) => [mic, verdict]),
  );

function answersTo(layout: Layout, mics: readonly string[]): readonly ClearAnswer[] {
  return [...clearInTurn({ token: 7, layout, mics })];
}

function foundIn(answers: readonly ClearAnswer[]) {
  const last = answers.at(-1);
  if (last?.kind !== 'found') throw new Error('the last answer is what was found');
  return last;
}

const withMoved = (layout: Layout, moved: readonly ClearedMic[]): Layout =>
  moved.reduce((now, { mic, mount }) => changeMount(now, mic, () => mount), layout);

/** How deep things stand in each other, by what stands in what. */
const depths = (layout: Layout): ReadonlyMap<string, number> =>
  new Map(
    createStandingFinder()(buildRig(layout), layout.deck).map(({ code, about, overlap }) => [
      `${code} ${about.join(' ')}`,
      overlap,
    ]),
  );

/** Clips all round the snare, with a margin that leaves few places there. */
function crowdedSnare(seed: number): Layout {
  const start = kit();
  const clip = start.mics.find(({ id }) => id === 'mic-rack-1');
  if (clip?.mount.kind !== 'clip') throw new Error('the rack tom has a clip');
  const { mount } = clip;
  const clips = fc.sample(
    fc.array(
      fc.record({
        angle: fc.integer({ min: 0, max: 719 }).map((half) => half / 2),
        reach: fc.integer({ min: 0, max: 60 }),
        height: fc.integer({ min: 20, max: 80 }),
      }),
      { minLength: 6, maxLength: 6 },
    ),
    { numRuns: 1, seed },
  )[0];
  return (clips ?? []).reduce<Layout>(
    (to, at) =>
      addMic(to, {
        ...clip,
        hears: ['snare'],
        input: null,
        mount: { ...mount, ...at, drum: 'snare' },
      }),
    { ...start, margin: 120, mics: [] },
  );
}

/**
 * A clip on the snare that has a clear spot at one end of its reach only, with a margin that leaves no other, and a mic on a boom whose grille is there:
 * itself too near to the sticks, and farther from its own clear spots.
 */
function placeTaken(): Layout {
  const start = { ...kit(), margin: 157 };
  const clip = start.mics.find(({ id }) => id === 'mic-rack-1');
  const high = start.mics.find(({ mount }) => mount.kind === 'stand' && mount.tip.z > 1400);
  const snare = start.pieces.find((piece) => piece.kind === 'snare');
  if (clip?.mount.kind !== 'clip' || high?.mount.kind !== 'stand' || snare?.kind !== 'snare') {
    throw new Error('the kit has a clip, an overhead and a snare');
  }
  const held = { ...clip.mount, drum: snare.id, angle: 90 };
  const onSnare = { ...clip, hears: [snare.id], mount: held };
  const only = { ...held, angle: 139.5, reach: -32, height: 20, pitch: 32 };
  const [there] = buildRig({ ...start, mics: [{ ...onSnare, mount: only }] }).mics;
  const { x = 0, y = 0, z = 0 } = there?.tip ?? {};
  const out = Math.atan2(x - snare.x, y - snare.y);
  const mount = {
    ...high.mount,
    base: { x: x + 700 * Math.sin(out), y: y + 700 * Math.cos(out) },
    tip: { x, y, z: z - 20 },
    azimuth: Math.round((out * 180) / Math.PI) + 180,
    pitch: -30,
  };
  const wide: MicClass = {
    id: 'wide',
    name: 'Wide',
    length: 150,
    diameter: 100,
    address: 'end',
    patternA: 0.5,
    type: 'dynamic',
    phantom: false,
    connector: 'straight',
    mass: 0.3,
  };
  const inPlace = { ...high, micClass: wide.id, hears: [snare.id], mount };
  return { ...start, ownClasses: [wide], mics: [onSnare, inPlace] };
}

describe('clear spots, one after the other', () => {
  const clips = ['mic-rack-1', 'mic-rack-2'];
  /** One of the clips is a few mm nearer than the margin. */
  const inTheWay: Layout = { ...kit(), margin: 80 };
  let answers: readonly ClearAnswer[] = [];
  beforeAll(() => {
    answers = answersTo(inTheWay, clips);
  }, 120_000);

  it('what is found is clear by the engine, and what is clear stays', () => {
    expect(clips.map((mic) => verdicts(inTheWay).get(mic))).toEqual(['tight', 'clear']);
    const { moved, left } = foundIn(answers);
    expect(left).toEqual([]);
    expect(moved.map(({ mic }) => mic)).toEqual(['mic-rack-1']);
    const cleared = withMoved(inTheWay, moved);
    expect(clips.map((mic) => verdicts(cleared).get(mic))).toEqual(['clear', 'clear']);
  });

  it('T1: tells how many are done, and answers the question that was asked', () => {
    expect(new Set(answers.map(({ token }) => token))).toEqual(new Set([7]));
    const done = answers.flatMap((each) => (each.kind === 'progress' ? [each.done] : []));
    expect(done).toEqual(done.toSorted((a, b) => a - b));
    expect(done.at(-1)).toBe(2);
    const soFar = answers.flatMap((each) => (each.kind === 'progress' ? (each.soFar ?? []) : []));
    const { moved, left } = foundIn(answers);
    expect(soFar).toHaveLength(2);
    expect(soFar.at(-1)).toEqual({ moved, left });
  });

  it('a mic that is clear is neither moved nor left; a plate in the way is left where it lies', () => {
    expect(foundIn(answersTo(kit(), clips))).toMatchObject({ moved: [], left: [] });
    const [pedal] = kit().pieces.filter((piece) => piece.kind === 'pedal');
    if (pedal?.kind !== 'pedal') throw new Error('the kit has a pedal');
    // A plate on the deck where a shin comes down to the pedal's heel.
    const plate = { kind: 'plateOnDeck' as const, x: pedal.x, y: pedal.y, turn: 90 };
    const plated = changeMount(kit(), 'mic-kick-plate', () => plate);
    expect(verdicts(plated).get('mic-kick-plate')).not.toBe('clear');
    expect(foundIn(answersTo(plated, ['mic-kick-plate']))).toMatchObject({
      moved: [],
      left: [{ mic: 'mic-kick-plate', why: 'fixed' }],
    });
  });

  it('of two mics that meet only the one that was added last moves; where it lies still, the other does; where both do, both are left', () => {
    const analyse = createAnalyst();
    const clip = kit().mics.find(({ id }) => id === 'mic-rack-1');
    const plate = kit().mics.find(({ id }) => id === 'mic-kick-plate');
    if (!clip || !plate) throw new Error('the kit has a clip and a plate');
    const both = addMic(addMic(kit(), { ...clip, input: null }), { ...plate, input: null });
    const [secondClip, secondPlate] = both.mics.slice(-2).map(({ id }) => id);
    const before = analyse(both);
    expect(judgementCounts(before)['in-the-way']).toBe(4);
    const mics = micsToLead(before);
    expect(mics).toHaveLength(4);
    const { moved, left } = foundIn(answersTo(both, mics));
    expect(moved.map(({ mic }) => mic)).toEqual([secondClip]);
    expect(left).toEqual([
      { mic: secondPlate, why: 'fixed' },
      { mic: plate.id, why: 'fixed' },
    ]);
    const after = analyse(withMoved(both, moved));
    expect(judgementCounts(after)['in-the-way']).toBe(2);
    expect(micsToLead(after)).toEqual([secondPlate, plate.id]);
    // A plate on the deck where the mast of an overhead stands that was there before it.
    const high = kit().mics.find(({ mount }) => mount.kind === 'stand' && mount.tip.z > 1400);
    if (high?.mount.kind !== 'stand') throw new Error('the kit has an overhead');
    const { x, y } = high.mount.base;
    const mount = { kind: 'plateOnDeck' as const, x, y, turn: 0 };
    const under = addMic(kit(), { ...plate, input: null, mount });
    const report = analyse(under);
    expect(micsToLead(report)).toEqual([under.mics.at(-1)?.id, high.id]);
    const found = foundIn(answersTo(under, micsToLead(report)));
    expect(found.moved.map(({ mic }) => mic)).toEqual([high.id]);
    expect(micsToLead(analyse(withMoved(under, found.moved)))).toEqual([]);
  }, 60_000);

  it('T2: whose only place was taken by one that moves later is cleared in the same run', () => {
    const layout = placeTaken();
    const [clip = '', inPlace = ''] = layout.mics.map(({ id }) => id);
    const answers = answersTo(layout, [clip, inPlace]);
    const told = answers.flatMap((each) => (each.kind === 'progress' ? (each.soFar ?? []) : []));
    expect(told.map(({ moved }) => moved.map(({ mic }) => mic))).toEqual([
      [],
      [inPlace],
      [inPlace, clip],
    ]);
    expect(told.map(({ left }) => left.map(({ why }) => why))).toEqual([
      ['none-found'],
      ['not-again'],
      [],
    ]);
    const again = answers.filter((each) => each.kind === 'progress' && each.again === clip);
    expect(new Set(again.map((each) => each.kind === 'progress' && each.done))).toEqual(
      new Set([1]),
    );
    const cleared = verdicts(withMoved(layout, foundIn(answers).moved));
    expect([...cleared.values()]).toEqual(['clear', 'clear']);
  }, 120_000);

  it('T2, T3: all of them, looked for once more right after, move no more', () => {
    const analyse = createAnalyst();
    let again = 0;
    for (const layout of [...seededKits(2, 3), crowdedSnare(1), placeTaken()]) {
      const answers = answersTo(layout, micsToLead(analyse(layout)));
      const { moved } = foundIn(answers);
      if (moved.length === 0) continue;
      expect(new Set(moved.map(({ mic }) => mic)).size).toBe(moved.length);
      const cleared = withMoved(layout, moved);
      expect(foundIn(answersTo(cleared, micsToLead(analyse(cleared)))).moved).toEqual([]);
      again += answers.filter(
        (each) => each.kind === 'progress' && each.again !== undefined,
      ).length;
    }
    expect(again).toBeGreaterThan(0);
  }, 240_000);

  // Rule N4 lets each of two mics that stand in each other come deeper by TOUCHING.
  it('N4 whatever is cleared, no other mic is worse off, and nothing stands deeper in anything than before', () => {
    const kits = [{ ...kit(), margin: 80 }, ...seededKits(3, 19)];
    let count = 0;
    for (const layout of kits) {
      const { moved } = foundIn(
        answersTo(
          layout,
          layout.mics.map(({ id }) => id),
        ),
      );
      const cleared = withMoved(layout, moved);
      count += moved.length;
      const [was, is] = [verdicts(layout), verdicts(cleared)];
      for (const { id } of layout.mics) {
        const isMoved = moved.some(({ mic }) => mic === id);
        expect(is.get(id)).toBe(isMoved ? 'clear' : was.get(id));
      }
      const before = depths(layout);
      for (const [what, depth] of depths(cleared)) {
        expect(before.get(what), what).toBeDefined();
        expect(depth, what).toBeLessThanOrEqual((before.get(what) ?? 0) + 2 * TOUCHING);
      }
    }
    expect(count).toBeGreaterThan(4);
  }, 240_000);
});
