import type { Frames } from '../tools/lastPerFrame.ts';

/** Drawings that wait for a frame. */
export interface DrawQueue {
  /** Has something drawn in the next frame, or sooner when somebody says so. */
  add(draw: () => void): void;
  /** Draws at once what waits, each thing once. */
  drawNow(): void;
}

export function drawQueue(frames: Frames): DrawQueue {
  let waiting: (() => void)[] = [];
  let ticket: number | null = null;
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
      ticket ??= frames.request(drawNow);
    },
    drawNow,
  };
}
