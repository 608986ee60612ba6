import { Util } from 'konva/lib/Util.js';
import { KonvaRenderer } from 'react-konva/es/ReactKonvaCore.js';
import { screenFrames } from '../tools/lastPerFrame.ts';
import { drawQueue } from './drawQueue.ts';

const queue = drawQueue(screenFrames);
// Konva draws what changed in the frame after the one it changed in: what a finger moves would be seen a frame later than it could.
Util.requestAnimFrame = (draw) => queue.add(() => draw());

/** Makes a change, which React is to render at once, and draws on every canvas what changed. To be called in a frame. */
export const drawnAtOnce = (change: () => void): void =>
  queue.drawnAtOnce(() => {
    change();
    // What is drawn follows the session by itself, and would be rendered after this.
    KonvaRenderer.flushSyncWork();
  });
