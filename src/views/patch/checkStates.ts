import type { CheckStep } from '../../patch/lineCheck/lineCheck.ts';

/** What came of a line, with its sign. */
export const CHECK_STATES: Readonly<Record<CheckStep['state'], string>> = {
  pass: '✓ passed',
  fail: '✗ failed',
  skip: 'skipped',
  open: 'not checked',
  stale: 'changed since, check again',
};
