import { findMicClass } from '../layout/catalogue/micClasses.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mic } from '../layout/mics/mic.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import { placeClipMic } from './mics/clipMic.ts';
import { placePlateInKick, placePlateOnDeck } from './mics/plateMic.ts';
import { placeStandMic } from './mics/standMic.ts';
import type { Kit } from './mics/wayDown.ts';
import type { PlacedMic } from './placed.ts';

/** What a mic's place depends on. */
export type MicSurroundings = Kit & Pick<Layout, 'ownClasses'>;

/**
 * A mic in space, kit frame. The layout's references must have been checked (rules L4 and L5): a class, drum or kick that
 * is not there throws a RangeError.
 */
export function placeMic(mic: Mic, layout: MicSurroundings): PlacedMic {
  const micClass = findMicClass(layout, mic.micClass);
  if (!micClass) throw new RangeError(`Mic ${mic.id}: expected a known class, not ${mic.micClass}`);
  const microphone = { mic, micClass };
  const { mount } = mic;
  switch (mount.kind) {
    case 'clip': {
      const drum = layout.pieces.find(({ id }) => id === mount.drum);
      if (!drum || !isDrum(drum)) throw notThere(mic, 'drum', mount.drum);
      return placeClipMic(microphone, mount, drum, layout);
    }
    case 'stand':
      return placeStandMic(microphone, mount);
    case 'plateInKick': {
      const kick = layout.pieces.find(({ id }) => id === mount.kick);
      if (kick?.kind !== 'kick') throw notThere(mic, 'kick', mount.kick);
      return placePlateInKick(microphone, mount, kick);
    }
    case 'plateOnDeck':
      return placePlateOnDeck(microphone, mount);
  }
}

const notThere = (mic: Mic, expected: string, found: string): RangeError =>
  new RangeError(`Mic ${mic.id}: expected the id of a ${expected} of the layout, not ${found}`);
