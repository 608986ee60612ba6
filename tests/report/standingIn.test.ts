import { expect, test } from 'vitest';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { needsSpot } from '../../src/report/needsSpot.ts';
import { standingIn } from '../../src/report/standingIn.ts';
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

test('such a mic needs another spot whatever its clearance, and a clear one that stands free does not', () => {
  const low = clipInDrum(layout);
  const report = analyse(low.layout);
  const needing = report.clearances.filter((row) => needsSpot(row, report));
  expect(needing.map(({ mic }) => mic)).toEqual([low.mic.id]);
});
