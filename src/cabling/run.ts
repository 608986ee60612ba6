import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { DescentPart } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';

/** One part of a run's length, in the order in which the cable is laid. */
export interface RunPart {
  readonly what:
    | DescentPart['along']
    | 'loopAtMic'
    | 'deck'
    | 'edge'
    | 'box'
    | 'loopAtBox'
    | 'dressing';
  readonly length: Mm;
}

/** One cable from a mic to a box input. */
export interface Run {
  readonly mic: Id;
  readonly input: number | null;
  /** The way over the deck, from where the cable reaches the deck to the box input. Deck frame, mm. */
  readonly route: readonly Vec2<'deck'>[];
  readonly parts: readonly RunPart[];
  readonly total: Mm;
  /** Where no way keeps clear of everything: what the route had to pass through. Empty in the usual case. */
  readonly through: readonly Id[];
}
