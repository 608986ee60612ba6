import { expect, test } from 'vitest';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { needsSpot } from '../../src/report/needsSpot.ts';
import { micsStandingIn, withoutMeetings } from '../../src/report/standingIn.ts';
import { cutting } from './cantStaySamples.ts';
import { clipInDrum } from './clipInDrum.ts';

const layout = largeKit('kit');
const analyse = createAnalyst();

test('a mic that is lowered into its own drum stands in it, though nothing that moves is near', () => {
  expect(analyse(layout).findings.flatMap(micsStandingIn)).toEqual([]);
  const low = clipInDrum(layout);
  const report = analyse(low.layout);
  expect(report.clearances.find(({ mic }) => mic === low.mic.id)?.verdict).toBe('clear');
  const found = report.findings.filter((finding) => micsStandingIn(finding).length > 0);
  expect(found.flatMap(micsStandingIn)).toEqual([low.mic.id]);
  expect(found[0]?.about).toEqual([low.mic.id, low.drum]);
  expect(found[0]?.severity).toBe('stop');
});

test('two mics that meet both stand in something, and in nothing but each other', () => {
  const { layout: met, ids } = cutting(layout);
  const report = analyse(met);
  expect(report.findings.flatMap(micsStandingIn).toSorted()).toEqual(ids.toSorted());
  expect(withoutMeetings(report).findings.flatMap(micsStandingIn)).toEqual([]);
});

test('such a mic needs another spot whatever its clearance, and a clear one that stands free does not', () => {
  const low = clipInDrum(layout);
  const report = analyse(low.layout);
  const needing = report.clearances.filter((row) => needsSpot(row, report));
  expect(needing.map(({ mic }) => mic)).toEqual([low.mic.id]);
});
