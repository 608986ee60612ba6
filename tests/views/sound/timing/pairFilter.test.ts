import { describe, expect, it } from 'vitest';
import {
  ALL_PAIRS,
  filteredPairs,
  fittingFilter,
  partnersOf,
  timedMics,
} from '../../../../src/views/sound/timing/pairFilter.ts';
import { kit, sound } from '../sampleSound.ts';

const { rows } = sound.timing;
const all = kit.mics.map(({ id }) => id);
const overheads = (sound.overheads?.mics ?? []).map(({ mic }) => mic);

describe('the pairs that are shown', () => {
  it('are all, in their order, without a filter', () => {
    expect(filteredPairs(rows, ALL_PAIRS)).toEqual(rows);
  });

  it('are those of one mic: each pair is found from either of its mics', () => {
    const found = timedMics(rows, all).map((mic) => filteredPairs(rows, { mic, against: null }));
    expect(found.reduce((sum, { length }) => sum + length, 0)).toBe(2 * rows.length);
  });

  it('are one for a close mic with an overhead', () => {
    for (const { mic } of sound.close) {
      for (const against of overheads) {
        const [row, ...more] = filteredPairs(rows, { mic, against });
        expect(row).toMatchObject({ first: mic, second: against });
        expect(more).toEqual([]);
      }
    }
  });

  it('partners are the mics that a mic is timed against, in the layout’s order', () => {
    for (const mic of overheads) expect(partnersOf(rows, mic, all)).not.toContain(mic);
    expect(partnersOf(rows, null, all)).toEqual(timedMics(rows, all));
    const [mic = ''] = sound.close.map((row) => row.mic);
    for (const other of partnersOf(rows, mic, all)) {
      expect(filteredPairs(rows, { mic, against: other })).toHaveLength(1);
    }
  });

  it('a filter forgets mics that are gone or not timed together', () => {
    expect(fittingFilter(rows, { mic: 'gone', against: 'gone' }, all)).toEqual(ALL_PAIRS);
    const [one = '', two = ''] = sound.close
      .filter(({ source }, i, list) => list.findIndex((row) => row.source === source) === i)
      .map(({ mic }) => mic);
    expect(fittingFilter(rows, { mic: one, against: two }, all)).toEqual({
      mic: one,
      against: null,
    });
  });
});
