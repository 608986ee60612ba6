import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';

/**
 * Where a mic, moved over the plan at its own height with its aim kept, would be struck: closed rings round the forbidden ground
 * (outer rings and holes, even-odd), kit frame, mm. Never too small by more than `cell`.
 */
export interface ForbiddenZone {
  readonly mic: Id;
  readonly height: Mm;
  readonly cell: Mm;
  readonly rings: readonly (readonly Vec2[])[];
}
