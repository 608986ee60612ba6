import { describe, expect, test } from 'vitest';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { signWarnings } from '../../../src/views/words/signWarnings.ts';
import { startingKit } from '../../sheet/samples.ts';

const layout = startingKit('demo');
const analyse = createAnalyst();
const report = analyse(layout);
const other = layout.mics.find(({ mount }) => mount.kind === 'stand');
if (!other) throw new Error('no mic on a stand');

describe('what is said before anyone agrees', () => {
  test('nothing when all is clear; by name and count when not, the struck ones first', () => {
    const said = (...verdicts: readonly ('clear' | 'tight' | 'struck')[]) => {
      const clearances = report.clearances
        .slice(0, verdicts.length)
        .map((row, at) => ({ ...row, verdict: verdicts[at] ?? 'clear' }));
      const asked = clearances.map(({ mic }) => mic);
      return signWarnings(asked, { ...report, clearances }, layout);
    };
    expect(said('clear', 'clear')).toEqual([]);
    const told = said('tight', 'struck', 'tight');
    expect(told.map(({ verdict }) => verdict)).toEqual(['struck', 'tight']);
    expect(told[0]?.text).toMatch(/^1 mic would be struck: .+\. Look at it first$/);
    expect(told[1]?.text).toMatch(/^2 mics are tight: .+ and .+\. Look at them first$/);
  });
});

describe('a mic that stands in its drum', () => {
  const clip = layout.mics.find(({ mount }) => mount.kind === 'clip');
  if (clip?.mount.kind !== 'clip') throw new Error('no mic on a clip');
  const low = { ...clip, mount: { ...clip.mount, height: 5, pitch: 20, reach: 40 } };
  const sunk = { ...layout, mics: layout.mics.map((mic) => (mic === clip ? low : mic)) };

  test('is named where it is asked about, whatever room what moves leaves it', () => {
    const told = signWarnings([clip.id], analyse(sunk), sunk);
    expect(told.map(({ verdict }) => verdict)).toEqual(['struck']);
    expect(told[0]?.text).toMatch(/ goes into /);
    expect(signWarnings([other.id], analyse(sunk), sunk)).toEqual([]);
    expect(signWarnings([clip.id], report, layout)).toEqual([]);
  });
});
