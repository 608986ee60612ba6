import type { Frames } from '../tools/lastPerFrame.ts';

/** Drawings that wait for a frame. */
export interface DrawQueue {
  /** Has something drawn in the next frame, or sooner when somebody says so. */
  add(draw: () => void): void;
  /** Makes a change and draws at once what it asks for and what waited, each thing once. */
  drawnAtOnce(change: () => void): void;
}

export function drawQueue(frames: Frames): DrawQueue {
  let waiting: (() => void)[] = [];
  let ticket: number | null = null;
  let isChanging = false;
  const drawNow = (): void => {
    if (ticket !== null) frames.cancel(ticket);
    ticket = null;
    const draws = waiting;
    waiting = [];
    for (const draw of draws) draw();
  };
  return {
    add(draw) {
      waiting.push(draw);
      // Asking for a frame in every frame, only to take it back, costs as much as drawing a thing.
      if (!isChanging) ticket ??= frames.request(drawNow);
    },
    drawnAtOnce(change) {
      isChanging = true;
      try {
        change();
      } finally {
        isChanging = false;
        drawNow();
      }
    },
  };
}
