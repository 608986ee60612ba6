import type { Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Side } from '../player/hands.ts';
import type { MicPart } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';

export type Hand = Side;
export type Verdict = 'clear' | 'tight' | 'struck';

/** A moving part: of the arm, a leg at rest, or a swinging cymbal. */
export type MovingPart = 'stick' | 'hand' | 'forearm' | 'thigh' | 'shin' | 'cymbal';

/** What moves when a mic is nearest to being hit. */
export type Movement =
  | { readonly kind: 'stroke'; readonly hand: Hand; readonly on: Id; readonly at: number }
  | {
      readonly kind: 'travel';
      readonly hand: Hand;
      readonly from: Id;
      readonly to: Id;
      readonly at: number;
    }
  | { readonly kind: 'leg'; readonly foot: Hand; readonly pedal: Id | null }
  | { readonly kind: 'swing'; readonly cymbal: Id };

/** The smallest distance between a mic and anything that moves (rule C1). */
export interface MicClearance {
  readonly mic: Id;
  readonly verdict: Verdict;
  /** mm; below 0 by how deep the solids overlap; infinite when nothing moves. At or below the exact minimum, by at most 0.1 mm. */
  readonly clearance: Mm;
  /** Undefined when nothing moves. */
  readonly nearest: Nearest | undefined;
}

export interface Nearest {
  readonly movement: Movement;
  readonly part: MovingPart;
  readonly micPart: MicPart;
  /** On the mic's surface and on the moving part's surface, kit frame. */
  readonly onMic: Vec3;
  readonly onMoving: Vec3;
}
