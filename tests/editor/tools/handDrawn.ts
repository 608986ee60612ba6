import type { Frames } from '../../../src/editor/tools/lastPerFrame.ts';

/** Frames that are drawn by hand. */
export function handDrawn(): Frames & { draw(): void; waiting(): number } {
  let calls: { ticket: number; call: () => void }[] = [];
  let next = 0;
  return {
    request(call) {
      next += 1;
      calls.push({ ticket: next, call });
      return next;
    },
    cancel(ticket) {
      calls = calls.filter((entry) => entry.ticket !== ticket);
    },
    draw() {
      const due = calls;
      calls = [];
      for (const { call } of due) call();
    },
    waiting: () => calls.length,
  };
}
