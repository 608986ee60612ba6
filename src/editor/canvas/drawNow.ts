import { Util } from 'konva/lib/Util.js';
import { screenFrames } from '../tools/lastPerFrame.ts';
import { drawQueue } from './drawQueue.ts';

const queue = drawQueue(screenFrames);
// Konva draws what changed in the frame after the one it changed in: what a finger moves would be seen a frame later than it could.
Util.requestAnimFrame = (draw) => queue.add(() => draw());

/** Draws on every canvas what changed, in the frame that it changed in. To be called in a frame, after React has rendered. */
export const drawNow = queue.drawNow;
