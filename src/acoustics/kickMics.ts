import { dot, length, perpendicular, subtract } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';
import type { Listener } from './listener.ts';
import type { Source } from './source.ts';
import { pathTo, type TimingRow } from './timing.ts';

/** Where a kick drum's mic is. */
export interface KickMic {
  readonly mic: Id;
  /** Inside the shell, or before the front head, behind the batter head, beside. */
  readonly place: 'inside' | 'front' | 'behind' | 'beside';
  /** How far behind the front head, along the drum; below 0 before it. */
  readonly depth: Mm;
  /** To the plane of the batter head, along the drum. */
  readonly toBatterHead: Mm;
  /** To the middle of the batter head, where the beater strikes. */
  readonly toBeater: Mm;
}

/** A kick drum, the close mics whose own source it is, and these two by two. */
export interface KickMics {
  readonly kick: Id;
  readonly hasPort: boolean;
  readonly mics: readonly KickMic[];
  readonly pairs: readonly TimingRow[];
}

/** Every kick of a kit with its mics. */
export const kickMics = (
  sources: readonly Source[],
  listeners: readonly Listener[],
  rows: readonly TimingRow[],
): readonly KickMics[] =>
  sources.flatMap((source) => {
    const { piece } = source;
    if (piece.kind !== 'kick') return [];
    const own = listeners.filter((mic) => mic.role === 'close' && mic.own === source);
    return [
      {
        kick: piece.id,
        hasPort: piece.port !== null,
        mics: own.map((mic) => kickMic(mic, source)),
        pairs: rows.filter((row) => row.kind === 'sameSource' && row.source === piece.id),
      },
    ];
  });

/** The batter head's normal points away from the front head, so that a mic before it has a negative distance. */
function kickMic(mic: Listener, source: Source): KickMic {
  const { struck, depth } = source;
  const from = subtract(mic.ear.tip, struck.centre);
  const before = -dot(from, struck.normal);
  const aside = length(perpendicular(from, struck.normal));
  return {
    mic: mic.id,
    place: placeOf(before, aside, source),
    depth: depth - before,
    toBatterHead: Math.abs(before),
    toBeater: pathTo(mic, source),
  };
}

function placeOf(before: Mm, aside: Mm, { depth, struck }: Source): KickMic['place'] {
  if (before >= depth) return 'front';
  if (before <= 0) return 'behind';
  return aside < struck.radius ? 'inside' : 'beside';
}
