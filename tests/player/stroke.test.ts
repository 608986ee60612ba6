import { describe, expect, it } from 'vitest';
import { along, distance } from '../../src/geometry/vector.ts';
import { Arm } from '../../src/player/arm.ts';
import { raisedTo, strikeOn } from '../../src/player/strike.ts';
import { Stroke } from '../../src/player/stroke.ts';
import { average, levelDrum, pointsAt } from './arms.ts';

describe('rule M1: a stroke', () => {
  const arm = new Arm(average);
  const strike = strikeOn(levelDrum(-100, 450, 680), 1, arm, 305);
  const stroke = new Stroke('right', 'snare', strike, arm);

  it('goes from contact at t = 0 to its full height at t = 1', () => {
    expect(distance(pointsAt(stroke, 0).tip, { x: -100, y: 450, z: 680 })).toBeLessThan(1e-9);
    expect(pointsAt(stroke, 1).tip.z).toBeCloseTo(680 + 305, 6);
  });

  it('is the strike raised by t at every time', () => {
    for (const t of [0, 0.25, 0.5, 0.9, 1]) {
      const { grip, stick } = raisedTo(strike, t);
      const points = pointsAt(stroke, t);
      expect(distance(points.grip, grip)).toBeLessThan(1e-9);
      expect(distance(points.tip, along(grip, stick, 296))).toBeLessThan(1e-9);
      expect(distance(points.butt, along(grip, stick, -110))).toBeLessThan(1e-9);
    }
  });

  it('is a stroke of its hand on its piece, from no other', () => {
    expect([stroke.side, stroke.on, stroke.from]).toEqual(['right', 'snare', null]);
  });
});
