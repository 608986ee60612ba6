import type { Layout } from '../../layout/layout.ts';
import type { ClearanceRow } from '../../report/report.ts';
import { nameOf } from './nameOf.ts';

export type Nearest = NonNullable<ClearanceRow['nearest']>;

/** What moves there, and what it is doing: `right stick, travelling from Snare to Ride`. */
export function movementWords(nearest: Nearest, layout: Layout): string {
  const { movement, part } = nearest;
  switch (movement.kind) {
    case 'stroke':
      return `${movement.hand} ${part}, playing ${nameOf(layout, movement.on)}`;
    case 'travel':
      return `${movement.hand} ${part}, travelling from ${nameOf(layout, movement.from)} to ${nameOf(layout, movement.to)}`;
    case 'leg':
      return movement.pedal === null
        ? `${movement.foot} ${part}, at rest`
        : `${movement.foot} ${part}, at rest on ${nameOf(layout, movement.pedal)}`;
    case 'swing':
      return `${nameOf(layout, movement.cymbal)}, swinging`;
  }
}

const micParts: Readonly<Record<Nearest['micPart'], string>> = {
  body: 'the mic itself',
  connector: 'its connector',
  bend: "the cable's bend",
  clipArm: "the clip's arm",
  boom: 'the boom',
  mast: 'the mast',
  base: 'the base',
  plate: 'the plate',
};

/** Which part of the mic or its mount is nearest: `the boom`. */
export const micPartWords = (part: Nearest['micPart']): string => micParts[part];
