import { addMic } from '../../edit/mics.ts';
import type { Id } from '../../fields.ts';
import type { Layout } from '../../layout.ts';
import type { Mic } from '../../mics/mic.ts';
import type { ClipMount } from '../../mics/mount.ts';
import { isDrum } from '../../pieces/piece.ts';
import type { BuiltInMicClassId } from '../micClasses.ts';
import { offeredMics } from './offeredMics.ts';

/** What is usually clipped to a snare or tom (common practice, from memory). */
const USUAL: BuiltInMicClassId = 'compact-dynamic';

/** A mic on a rim clip. */
export type ClipMic = Mic & { readonly mount: ClipMount };

/** The usual clip mic of a drum at the first of its usual places, as `addMic` would add it; null for other pieces and in a full layout. */
export function usualClip(layout: Layout, drum: Id): ClipMic | null {
  if (!layout.pieces.some((piece) => piece.id === drum && isDrum(piece))) return null;
  for (const offered of offeredMics(layout, [drum], USUAL)) {
    if (offered.mount.kind !== 'clip') continue;
    const mic = addMic(layout, offered).mics.at(layout.mics.length);
    return mic ? { ...mic, mount: offered.mount } : null;
  }
  return null;
}
