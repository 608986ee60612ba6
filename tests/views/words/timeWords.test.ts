import { describe, expect, it } from 'vitest';
import { changedWords, clockWords } from '../../../src/views/words/timeWords.ts';

const at = (day: number, hour: number, minute: number) =>
  new Date(2031, 4, day, hour, minute).getTime();

describe('times in words', () => {
  it('shows a 24-hour clock', () => {
    expect(clockWords(at(17, 9, 5))).toBe('09:05');
    expect(clockWords(at(17, 23, 59))).toBe('23:59');
  });

  it('counts days by the calendar, not by 24 hours', () => {
    expect(changedWords(at(17, 0, 1), at(17, 23, 59))).toBe('today 00:01');
    expect(changedWords(at(16, 23, 59), at(17, 0, 1))).toBe('yesterday 23:59');
    expect(changedWords(at(15, 23, 59), at(17, 0, 1))).toBe('2031-05-15');
  });

  it('crosses the end of a month', () => {
    expect(changedWords(new Date(2031, 3, 30, 22, 0).getTime(), at(1, 8, 0))).toBe(
      'yesterday 22:00',
    );
  });
});
