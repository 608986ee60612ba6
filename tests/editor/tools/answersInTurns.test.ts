import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answersInTurns } from '../../../src/editor/tools/answersInTurns.ts';
import { handDrawn } from './handDrawn.ts';

/** What a drag showed, frame by frame. */
function drag() {
  const shown: string[] = [];
  const frames = handDrawn();
  const line = answersInTurns<number>(
    {
      answer: (value) => shown.push(`answer ${value}`),
      place: (value) => shown.push(`place ${value}`),
    },
    frames,
  );
  return { shown, frames, line };
}

describe('answers in every second frame of a drag', () => {
  test('D1, D2 frames answer and place in turns, each with the last value', () => {
    const { shown, frames, line } = drag();
    for (let i = 0; i < 4; i += 1) {
      line.push(10 * i);
      line.push(10 * i + 1);
      frames.draw();
    }
    expect(shown).toEqual(['answer 1', 'place 11', 'answer 21', 'place 31']);
  });

  test('D2 what was only placed is answered in the next frame, and then all is done', () => {
    const { shown, frames, line } = drag();
    line.push(1);
    frames.draw();
    line.push(2);
    frames.draw();
    frames.draw();
    frames.draw();
    expect(shown).toEqual(['answer 1', 'place 2', 'answer 2']);
    expect(frames.waiting()).toBe(0);
  });

  test('D1, D2 whenever values come: the last is shown in its frame and answered at most one frame later', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 40 }), (pushes) => {
        const { shown, frames, line } = drag();
        let value = 0;
        let before: string | undefined;
        for (const count of pushes) {
          for (let n = 0; n < count; n += 1) {
            value += 1;
            line.push(value);
          }
          frames.draw();
          if (value > 0) expect(shown.at(-1)).toMatch(new RegExp(` ${value}$`));
          // No two frames in a row only place.
          const last = shown.at(-1);
          if (before?.startsWith('place')) expect(last).toMatch(/^answer/);
          before = last;
        }
      }),
    );
  });

  test('the end of a drag places what waits, once; the next drag begins with an answer', () => {
    const { shown, frames, line } = drag();
    line.push(1);
    frames.draw();
    line.push(2);
    line.finish();
    frames.draw();
    line.push(3);
    frames.draw();
    expect(shown).toEqual(['answer 1', 'place 2', 'answer 3']);
  });

  test('a drag that is taken back shows nothing more', () => {
    const { shown, frames, line } = drag();
    line.push(1);
    frames.draw();
    line.push(2);
    frames.draw();
    line.drop();
    frames.draw();
    expect(shown).toEqual(['answer 1', 'place 2']);
  });
});
