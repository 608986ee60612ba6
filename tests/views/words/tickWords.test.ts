import { expect, test } from 'vitest';
import { tickNews } from '../../../src/views/words/tickWords.ts';
import { sample } from './sampleLayout.ts';

const ticked = (...done: string[]) => ({ ...sample, setUp: { done } });

test('ticks that came off are counted, those that stayed or were set are not', () => {
  expect(tickNews(ticked('deck', 'check', 'box'), ticked('deck'))).toBe('2 set-up ticks came off');
  expect(tickNews(ticked('deck', 'box'), ticked('box'))).toBe('1 set-up tick came off');
  expect(tickNews(ticked('deck'), ticked('deck', 'box'))).toBe('');
});
