import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { closeChanges } from '../../src/acoustics/changes.ts';
import { nullAngle, patternOf } from '../../src/acoustics/pattern.ts';
import { aimMic } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { cosDeg, sinDeg } from '../../src/units/angle.ts';
import { kits } from '../rig/kits.ts';
import { classWith, micAt, only, sceneOf, smallSource, standAt } from './scenes.ts';

const acousticsOf = (layout: Layout) => createAcoustics()(layout, buildRig(layout));

/** A mic that looks along +x at its source 150 mm away, with a neighbour 400 mm away at an angle on the plan. */
function scene(patternA: number, neighbourAt: number): Layout {
  const own = classWith('own-class', patternA);
  return sceneOf(
    [
      smallSource('wanted', [150, 0, 1000]),
      smallSource('neighbour', [400 * cosDeg(neighbourAt), 400 * sinDeg(neighbourAt), 1000]),
    ],
    [micAt('mic', ['wanted'], standAt([0, 0, 1000], [0, 0]), 'own-class')],
    [own],
  );
}
const turnIn = (layout: Layout) => only(acousticsOf(layout).close[0]).turn;

describe('H27 a turn to the null', () => {
  it.each([
    { a: 0.25, off: -10 },
    { a: 0.25, off: 10 },
    { a: 0.375, off: -14 },
  ])('A = $a: puts a neighbour $off degrees off the null into it', ({ a, off }) => {
    const target = nullAngle(patternOf(a)) ?? 0;
    const turn = only(turnIn(scene(a, target + off)) ?? undefined);
    expect(turn.by).toBeCloseTo(Math.abs(off), 6);
    expect(turn.azimuth).toBeCloseTo(off, 6);
    expect(turn.pitch).toBeCloseTo(0, 6);
    expect(turn.inNull).toBe(true);
    expect(turn.neighbourLevel).toBeLessThan(0);
  });

  it('goes no farther than 15 degrees, then says that the null is not reached', () => {
    const target = nullAngle(patternOf(0.25)) ?? 0;
    const turn = only(turnIn(scene(0.25, target - 30)) ?? undefined);
    expect(turn.by).toBeCloseTo(15, 6);
    expect(turn.inNull).toBe(false);
  });

  it('is not offered where it gains nothing: in the null already, or without a null', () => {
    expect(turnIn(scene(0.25, nullAngle(patternOf(0.25)) ?? 0))).toBeNull();
    expect(turnIn(scene(0.7, 120))).toBeNull();
    expect(turnIn(scene(1, 120))).toBeNull();
  });

  it('keeps what it promises when the layout is changed so, on stands and clips of every kit', () => {
    let offered = 0;
    for (const layout of kits) {
      const before = acousticsOf(layout);
      for (const { mic, turn } of before.close) {
        if (!turn) continue;
        offered += 1;
        const { azimuth, pitch } = turn;
        const aimed = aimMic(layout, mic, azimuth === null ? { pitch } : { azimuth, pitch });
        const done = closeChanges(before, acousticsOf(aimed)).find((one) => one.mic === mic);
        expect(done?.isolation).toBeCloseTo(turn.isolation, 3);
        expect(done?.level).toBeCloseTo(turn.level, 3);
        expect(turn.isolation).toBeGreaterThanOrEqual(0.5);
        expect(turn.by).toBeLessThanOrEqual(15 + 1e-9);
      }
    }
    expect(offered).toBeGreaterThan(3);
  });
});
