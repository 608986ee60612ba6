import type { Id } from '../layout/fields.ts';
import type { CheckOutcome } from '../layout/patch.ts';

/** Parts of the Patch section. */
export type PatchPart = 'inputs' | 'splits' | 'check' | 'swap' | 'pull';

/** What the Patch section shows when it is open: kept while something else is looked at. */
export interface PatchView {
  readonly part: PatchPart;
  /** The drum to lift out; null: the snare. */
  readonly drum: Id | null;
}

export const usualPatchView: PatchView = { part: 'inputs', drum: null };

/** What a mark says of its thing: what came of its line (`open`: not checked yet), or that it is to be undone. */
export type MarkSign = CheckOutcome | 'open' | 'undo';

/** A mark on the plan at a mic or piece. */
export interface PlanMark {
  readonly about: Id;
  readonly sign: MarkSign;
  /** What is written on it, the fullest first. */
  readonly texts: readonly string[];
}

/** What a part of a section shows on the plan while it is looked at, in place of the verdicts. */
export interface PlanMarks {
  readonly shows: 'lineCheck' | 'swap';
  readonly marks: readonly PlanMark[];
}
