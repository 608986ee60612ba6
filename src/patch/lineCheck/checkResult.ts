import type { Id } from '../../layout/fields.ts';

export type CheckOutcome = 'pass' | 'fail' | 'skip';

/** What came of checking one channel, and what was checked: a changed plug or mic makes the result stale. */
export interface CheckResult {
  readonly channel: Id;
  readonly outcome: CheckOutcome;
  readonly note: string;
  readonly mic: Id;
  readonly micClass: Id;
  readonly input: number | null;
  /** Whether 48 V reached the mic. */
  readonly phantom: boolean;
}
