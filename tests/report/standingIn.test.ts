import { expect, test } from 'vitest';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { standingIn } from '../../src/report/standingIn.ts';

const layout = largeKit('kit');
const analyse = createAnalyst();

test('a mic that is lowered into its own drum stands in it, though nothing that moves is near', () => {
  expect([...standingIn(analyse(layout)).keys()]).toEqual([]);
  const clip = layout.mics.find(({ mount }) => mount.kind === 'clip');
  if (clip?.mount.kind !== 'clip') throw new Error('expected a clip');
  const { mount } = clip;
  const low: Mic = { ...clip, mount: { ...mount, height: 5, pitch: 20, reach: 40 } };
  const report = analyse({
    ...layout,
    mics: layout.mics.map((mic) => (mic === clip ? low : mic)),
  });
  expect(report.clearances.find(({ mic }) => mic === clip.id)?.verdict).toBe('clear');
  const found = standingIn(report);
  expect([...found.keys()]).toEqual([clip.id]);
  expect(found.get(clip.id)?.about).toEqual([clip.id, mount.drum]);
  expect(found.get(clip.id)?.severity).toBe('stop');
});
