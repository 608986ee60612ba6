import { describe, expect, test } from 'vitest';
import { drawQueue } from '../../../src/editor/canvas/drawQueue.ts';

/** Frames that come when told to. */
function frames() {
  const waiting = new Map<number, () => void>();
  let last = 0;
  return {
    request(call: () => void): number {
      last += 1;
      waiting.set(last, call);
      return last;
    },
    cancel: (ticket: number) => waiting.delete(ticket),
    come(): void {
      const calls = [...waiting.values()];
      waiting.clear();
      for (const call of calls) call();
    },
    asked: () => waiting.size,
  };
}

describe('drawings that wait for a frame', () => {
  test('are made in the next frame, in the order that they were asked for, once', () => {
    const screen = frames();
    const queue = drawQueue(screen);
    const drawn: string[] = [];
    for (const name of ['a', 'b']) queue.add(() => drawn.push(name));
    expect(screen.asked()).toBe(1);
    expect(drawn).toEqual([]);
    screen.come();
    screen.come();
    expect(drawn).toEqual(['a', 'b']);
  });

  test('are made at once after a change that somebody makes, and not again in the next frame', () => {
    const screen = frames();
    const queue = drawQueue(screen);
    const drawn: string[] = [];
    queue.add(() => drawn.push('a'));
    queue.drawnAtOnce(() => {
      queue.add(() => drawn.push('changed'));
      expect(drawn).toEqual([]);
    });
    expect(drawn).toEqual(['a', 'changed']);
    expect(screen.asked()).toBe(0);
    queue.drawnAtOnce(() => undefined);
    screen.come();
    expect(drawn).toEqual(['a', 'changed']);
    queue.add(() => drawn.push('b'));
    screen.come();
    expect(drawn).toEqual(['a', 'changed', 'b']);
  });

  test('no frame is asked for in a change that is drawn at once, and a change that fails is drawn too', () => {
    const screen = frames();
    const queue = drawQueue(screen);
    const drawn: string[] = [];
    const fail = () =>
      queue.drawnAtOnce(() => {
        queue.add(() => drawn.push('a'));
        expect(screen.asked()).toBe(0);
        throw new Error('fault');
      });
    expect(fail).toThrow('fault');
    expect(drawn).toEqual(['a']);
    queue.add(() => drawn.push('b'));
    expect(screen.asked()).toBe(1);
  });

  test('what a drawing asks for is drawn in the frame after it', () => {
    const screen = frames();
    const queue = drawQueue(screen);
    const drawn: string[] = [];
    queue.add(() => {
      drawn.push('a');
      queue.add(() => drawn.push('b'));
    });
    screen.come();
    expect(drawn).toEqual(['a']);
    screen.come();
    expect(drawn).toEqual(['a', 'b']);
  });
});
