import { beforeAll, describe, expect, it } from 'vitest';
import { clearInTurn } from '../../src/app/clearInTurn.ts';
import type { ClearAnswer, ClearedMic } from '../../src/app/clearQuestion.ts';
import { createClearances } from '../../src/clearance/clearances.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { addMic, changeMount } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
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

  it('tells how many are done, and answers the question that was asked', () => {
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
