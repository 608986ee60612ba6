import { expect, test } from 'vitest';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { standingIn, verdictCounts } from '../../src/report/standingIn.ts';
import { clipInDrum } from './clipInDrum.ts';

const layout = largeKit('kit');
const analyse = createAnalyst();

test('a mic that is lowered into its own drum stands in it, though nothing that moves is near', () => {
  expect([...standingIn(analyse(layout)).keys()]).toEqual([]);
  const low = clipInDrum(layout);
  const report = analyse(low.layout);
  expect(report.clearances.find(({ mic }) => mic === low.mic.id)?.verdict).toBe('clear');
  const found = standingIn(report);
  expect([...found.keys()]).toEqual([low.mic.id]);
  expect(found.get(low.mic.id)?.about).toEqual([low.mic.id, low.drum]);
  expect(found.get(low.mic.id)?.severity).toBe('stop');
});

test('a mic that stands in its drum is counted as struck, never as clear or tight', () => {
  const { clear, tight, struck } = verdictCounts(analyse(layout));
  expect([tight, struck]).toEqual([0, 0]);
  const low = clipInDrum(layout).layout;
  expect(verdictCounts(analyse(low))).toEqual({ clear: clear - 1, tight: 0, struck: 1 });
  const wide = analyse({ ...low, margin: 5000 });
  expect(wide.clearances.every(({ verdict }) => verdict === 'tight')).toBe(true);
  expect(verdictCounts(wide)).toEqual({ clear: 0, tight: wide.clearances.length - 1, struck: 1 });
});
