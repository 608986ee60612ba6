import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createPace } from '../../../src/views/parts/pace.ts';

/** A value that is followed, with frames that come when they are told to. */
function followed(value = 0) {
  const asked = new Map<number, () => void>();
  const hearers = new Set<() => void>();
  let [now, moving, next] = [value, true, 1];
  const paced = createPace<number>(
    {
      read: () => now,
      mayWait: () => moving,
      subscribe(hear) {
        hearers.add(hear);
        return () => hearers.delete(hear);
      },
    },
    {
      request(callback) {
        next += 1;
        asked.set(next, callback);
        return next;
      },
      cancel: (request) => void asked.delete(request),
    },
  );
  let heard = 0;
  const stop = paced.subscribe(() => {
    heard += 1;
  });
  const hearAll = () => {
    for (const hear of [...hearers]) hear();
  };
  return {
    paced,
    stop,
    heard: () => heard,
    isFollowing: () => hearers.size > 0,
    waiting: () => asked.size,
    change(to: number) {
      now = to;
      hearAll();
    },
    rest() {
      moving = false;
      hearAll();
    },
    move() {
      moving = true;
    },
    hearAgain: hearAll,
    /** A frame: first what was asked for before it. */
    frame() {
      const due = [...asked];
      asked.clear();
      for (const [, callback] of due) callback();
    },
  };
}

describe('a panel that follows at half the pace', () => {
  test('Y1 of changes in every frame every second one is shown, in the frame after it came', () => {
    const { paced, change, frame, heard } = followed();
    const seen: number[] = [];
    for (let i = 1; i <= 8; i += 1) {
      frame();
      change(i);
      seen.push(paced.snapshot());
    }
    expect(seen).toEqual([0, 1, 1, 3, 3, 5, 5, 7]);
    expect(heard()).toBe(4);
  });

  test('Y1 of changes in every second frame each is shown, in the frame that has none', () => {
    const { paced, change, frame } = followed();
    const seen: number[] = [];
    for (let i = 1; i <= 8; i += 1) {
      frame();
      if (i % 2 === 1) change(i);
      seen.push(paced.snapshot());
    }
    expect(seen).toEqual([0, 1, 1, 3, 3, 5, 5, 7]);
  });

  test('Y1 hearing of the same value again, because something beside it changed, is no change', () => {
    const { paced, change, frame, hearAgain, heard } = followed();
    change(1);
    frame();
    expect(paced.snapshot()).toBe(1);
    for (let i = 0; i < 6; i += 1) {
      hearAgain();
      frame();
    }
    expect(heard()).toBe(1);
  });

  test('Y1 what is shown is never older than two frames, whenever changes come', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 60 }), (changes) => {
        const { paced, change, frame } = followed();
        const cameIn = [0];
        let last = 0;
        for (const [i, count] of changes.entries()) {
          frame();
          for (let n = 0; n < count; n += 1) {
            last += 1;
            cameIn[last] = i;
            change(last);
          }
          const shown = paced.snapshot();
          // The first change that is not shown yet came at most two frames ago.
          if (shown < last) expect(i - (cameIn[shown + 1] ?? i)).toBeLessThan(2);
        }
        frame();
        frame();
        expect(paced.snapshot()).toBe(last);
      }),
    );
  });

  test('Y2 when nothing moves any more it is shown at once, and nothing is left to wait for', () => {
    const { paced, change, frame, rest, waiting } = followed();
    change(1);
    change(2);
    expect(paced.snapshot()).toBe(0);
    rest();
    expect(paced.snapshot()).toBe(2);
    expect(waiting()).toBe(0);
    change(3);
    expect(paced.snapshot()).toBe(3);
    change(4);
    expect(paced.snapshot()).toBe(4);
    frame();
    expect(paced.snapshot()).toBe(4);
  });

  test('Y3 who comes during a drag reads what the others read', () => {
    const { paced, change, frame } = followed();
    change(1);
    frame();
    change(2);
    const late: number[] = [];
    const leave = paced.subscribe(() => late.push(paced.snapshot()));
    expect(paced.snapshot()).toBe(1);
    frame();
    frame();
    expect(late).toEqual([2]);
    leave();
  });

  test('with nobody reading nothing is followed, and the value is the present one', () => {
    const { paced, change, stop, isFollowing, waiting } = followed();
    change(1);
    change(2);
    stop();
    expect(isFollowing()).toBe(false);
    expect(waiting()).toBe(0);
    change(9);
    expect(paced.snapshot()).toBe(9);
    paced.subscribe(() => {});
    expect(paced.snapshot()).toBe(9);
  });
});
