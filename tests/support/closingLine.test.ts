import { expect, test } from 'vitest';
import { addUp, closingLine, countOutcome, countPlaywright, countVitest } from './closingLine.mjs';

const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((one) => ({ status: one })),
});

test('every test that ran counts once, as passed or failed (C1)', () => {
  const testResults = [
    file('failed', 'passed', 'failed', 'passed', 'skipped'),
    file('passed', 'passed'),
  ];
  expect(countVitest({ testResults })).toEqual({ passed: 3, failed: 1 });
  expect(countPlaywright({ stats: { expected: 5, unexpected: 2, flaky: 1 } })).toEqual({
    passed: 5,
    failed: 3,
  });
});

test('a test file that could not be loaded is one failure (C2)', () => {
  expect(countVitest({ testResults: [file('failed'), file('passed', 'passed')] })).toEqual({
    passed: 1,
    failed: 1,
  });
});

test('a step that broke without a failed test is one failure (C3)', () => {
  expect(countOutcome({ broke: true, tests: false })).toEqual({ passed: 0, failed: 1 });
  const broke = { broke: true, tests: true };
  expect(countOutcome({ ...broke, counts: { passed: 4, failed: 0 } })).toEqual({
    passed: 4,
    failed: 1,
  });
  expect(countOutcome({ ...broke, counts: { passed: 4, failed: 2 } })).toEqual({
    passed: 4,
    failed: 2,
  });
});

test('a test step without a report is one failure (C4)', () => {
  expect(countOutcome({ broke: false, tests: true, counts: undefined })).toEqual({
    passed: 0,
    failed: 1,
  });
});

test('a test step in which no test ran is one failure (C5)', () => {
  const counts = { passed: 0, failed: 0 };
  expect(countOutcome({ broke: false, tests: true, counts })).toEqual({ passed: 0, failed: 1 });
});

test('the closing line adds up all steps', () => {
  const total = addUp([
    { broke: false, tests: false },
    { broke: true, tests: false },
    { broke: false, tests: true, counts: { passed: 12, failed: 0 } },
    { broke: true, tests: true, counts: { passed: 3, failed: 2 } },
  ]);
  expect(closingLine(total)).toBe('15 passed, 3 failed');
});
