import type { Id } from '../../layout/fields.ts';
import type { Decibels } from '../../units/quantity.ts';
import type { Polarity } from '../polarity.ts';
import type { Hertz } from '../quantities.ts';
import type { Insert } from '../starts.ts';

/**
 * One channel of the input list as far as it is set by hand; null: as usual. The first channel of a mic has the mic's id; a
 * second one of the same mic has an id of its own.
 */
export interface Channel {
  readonly id: Id;
  readonly mic: Id;
  /** Its number; null: the one after the row before (the first row: 1). */
  readonly number: number | null;
  readonly phantom: boolean | null;
  readonly polarity: Polarity | null;
  /** 0: no high-pass. */
  readonly highPass: Hertz | null;
  /** How far the signal is turned down before the preamplifier, not negative. 0: no pad. */
  readonly pad: Decibels | null;
  readonly insert: Insert | null;
  readonly notes: string;
}

/** A channel with nothing set by hand. */
export const plainChannel = (id: Id, mic: Id): Channel => ({
  id,
  mic,
  number: null,
  phantom: null,
  polarity: null,
  highPass: null,
  pad: null,
  insert: null,
  notes: '',
});
