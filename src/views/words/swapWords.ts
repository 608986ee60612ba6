import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { isCymbal } from '../../layout/pieces/piece.ts';
import type { SwapOffer, SwapRow } from '../../report/swapOffer.ts';
import { standWords } from './kindWords.ts';
import { counted, nameOf } from './nameOf.ts';

/** One thing to undo: `Unplug Snare mic, box input 2`. */
export function swapStepWords({ what, about }: SwapRow, drum: Id, layout: Layout): string {
  const name = nameOf(layout, about);
  switch (what) {
    case 'unplug': {
      const input = layout.mics.find(({ id }) => id === about)?.input ?? null;
      return input === null ? `Unplug ${name}` : `Unplug ${name}, box input ${input}`;
    }
    case 'unclip':
      return `Take ${name} off with its clip`;
    case 'swingBoom':
      return `Swing the boom of ${name} away`;
    case 'moveStand':
      return `Move the stand of ${name}`;
    case 'movePlate':
      return `Move ${name}`;
    case 'takeOff':
      return `Take ${name} off`;
    case 'moveAside':
      return isSwung(layout, about) ? `Swing ${name} aside` : `Move ${name} aside`;
    case 'release':
      return about === drum ? 'Open its stand' : `Loosen it from ${name}`;
  }
}

const marks: Readonly<Record<SwapRow['what'], string>> = {
  unplug: 'unplug',
  unclip: 'clip off',
  swingBoom: 'swing away',
  moveStand: 'move',
  movePlate: 'move',
  takeOff: 'take off',
  moveAside: 'aside',
  release: 'open stand',
};

/** The same on the plan, in a word or two. */
export const swapMarkWords = ({ what, about }: SwapRow, drum: Id): string =>
  what === 'release' && about !== drum ? 'loosen' : marks[what];

/** What another way of holding a mic is, and what it saves. */
export function swapOfferWords(offer: SwapOffer, now: number, layout: Layout): string {
  const name = nameOf(layout, offer.mic);
  const stand = standWords(offer.mount.stand);
  const how =
    offer.kind === 'boomForClip'
      ? `${name} on a boom instead of its clip (${stand.charAt(0).toLowerCase()}${stand.slice(1)})`
      : `the boom of ${name} from another side`;
  return `${counted(offer.steps, 'thing')} instead of ${now}: ${how}`;
}

const isSwung = (layout: Layout, id: Id): boolean =>
  layout.pieces.some((piece) => piece.id === id && isCymbal(piece));
