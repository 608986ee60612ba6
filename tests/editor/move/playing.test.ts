import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DURATION, playedFrom, stepFrom } from '../../../src/editor/move/playing.ts';

const moment = fc.double({ min: 0, max: 1, noNaN: true });
/** Times between frames, ms: even and uneven ones. */
const frames = fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 400, maxLength: 400 });

/** The moments that are shown, frame by frame, until it stops. */
function shown(from: number, nearestAt: number, times: readonly number[]): readonly number[] {
  const moments: number[] = [];
  let elapsed = 0;
  for (const time of times) {
    elapsed += time;
    const { at, isPlaying } = playedFrom(from, nearestAt, elapsed);
    moments.push(at);
    if (!isPlaying) return moments;
  }
  return moments;
}

describe('a move that is played', () => {
  test('P1 stops at its nearest moment, exactly, whatever the frames are, and has not passed it before', () => {
    fc.assert(
      fc.property(moment, moment, frames, (from, nearestAt, times) => {
        const moments = shown(from, nearestAt, times);
        expect(moments.at(-1)).toBe(nearestAt);
        // The way from where it began, round its end.
        const ways = moments.slice(0, -1).map((at) => (at - from + 1) % 1);
        const whole = (((nearestAt - from) % 1) + 1) % 1 || 1;
        for (const [i, way] of ways.entries()) {
          expect(way).toBeLessThan(whole + 1e-9);
          expect(way).toBeGreaterThanOrEqual((ways[i - 1] ?? 0) - 1e-9);
        }
      }),
    );
  });

  test('P2 from its nearest moment it goes the whole way round', () => {
    fc.assert(
      fc.property(moment, (nearestAt) => {
        expect(playedFrom(nearestAt, nearestAt, 0.99 * DURATION).isPlaying).toBe(true);
        expect(playedFrom(nearestAt, nearestAt, DURATION)).toEqual({
          at: nearestAt,
          isPlaying: false,
        });
      }),
    );
  });

  test('P3 by steps it comes to its nearest moment and round to it again, in few steps that all show something else', () => {
    fc.assert(
      fc.property(moment, moment, (from, nearestAt) => {
        let at = from;
        const seen: number[] = [];
        for (let step = 0; step < 24; step += 1) {
          const next = stepFrom(at, nearestAt);
          expect(next).not.toBe(at);
          expect(next).toBeGreaterThanOrEqual(0);
          expect(next).toBeLessThanOrEqual(1);
          at = next;
          seen.push(at);
        }
        expect(seen.filter((one) => one === nearestAt).length).toBeGreaterThanOrEqual(1);
      }),
    );
    expect([0, 0.1, 0.25, 0.3].map((at) => stepFrom(at, 0.25))).toEqual([0.1, 0.2, 0.3, 0.4]);
    expect(stepFrom(0.2, 0.25)).toBe(0.25);
    expect([stepFrom(0.9, 0.25), stepFrom(1, 0.25), stepFrom(1, 0)]).toEqual([1, 0, 0]);
  });
});
