import { decodeQR } from 'qr/decode.js';
import type { CodeReader, Picture, Reading, SeenInPicture } from '../session/handOver.ts';
import { type Gathering, gatheredText, missingOf, taken } from '../storage/handOver/gather.ts';

/** Milliseconds that may go into one picture before the camera's next one is better. */
const LONGEST_LOOK = 60;

/** A reader that remembers the codes it has seen. */
export function codeReader(): CodeReader {
  let gathering: Gathering | null = null;
  return {
    look: async (picture) => {
      const text = textIn(picture);
      if (text === null) return readingOf(gathering, 'nothing');
      const next = taken(gathering, text);
      gathering = next.gathering;
      return readingOf(gathering, next.seen);
    },
  };
}

function readingOf(gathering: Gathering | null, seen: SeenInPicture): Reading {
  if (gathering === null) return { seen, count: null, missing: [], text: null, isBroken: false };
  const missing = missingOf(gathering);
  const text = gatheredText(gathering);
  const isBroken = missing.length === 0 && text === null;
  return { seen, count: gathering.count, missing, text, isBroken };
}

function textIn(picture: Picture): string | null {
  try {
    return decodeQR(picture, { timeLimit: LONGEST_LOOK });
  } catch {
    // The library throws for every picture without a code that it can read, which most of a camera's are.
    return null;
  }
}
