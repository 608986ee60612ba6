import { describe, expect, it } from 'vitest';
import { airChange, type TimingRow } from '../../../../src/report/sound.ts';
import {
  airChangeWords,
  airWords,
  alignmentWords,
  harmOf,
  laterWords,
  originAirWords,
  polarityWords,
  rippleWords,
  rowTitle,
  tryWords,
} from '../../../../src/views/sound/words/timingWords.ts';
import { nameOf } from '../../../../src/views/words/nameOf.ts';
import { first, kit, sound } from '../sampleSound.ts';

const row = first(sound.timing.rows);
const withReason = (
  reason: TimingRow['polarity']['reason'],
  tryFirst: 'normal' | 'inverted' = 'normal',
): TimingRow => ({ ...row, phase: 120, fundamental: 190, polarity: { reason, tryFirst } });

describe('timing in words', () => {
  it('names both mics and what is timed', () => {
    expect(rowTitle(row, kit)).toBe(
      `${nameOf(kit, row.first)} and ${nameOf(kit, row.second)}, by ${nameOf(kit, row.source)}`,
    );
  });

  it('says which is later, whichever it is', () => {
    const delay = (ms: number) => ({ ms, samples48: ms * 48, samples96: ms * 96 });
    expect(laterWords({ ...row, pathDifference: 620, delay: delay(1.81) }, kit, 'mm')).toBe(
      `${nameOf(kit, row.second)} is 620 mm and 1.81 ms later.`,
    );
    expect(laterWords({ ...row, pathDifference: -620, delay: delay(-1.81) }, kit, 'mm')).toBe(
      `${nameOf(kit, row.first)} is 620 mm and 1.81 ms later.`,
    );
    expect(laterWords({ ...row, pathDifference: 0, delay: delay(0) }, kit, 'mm')).toContain(
      'same time',
    );
  });

  it('says which polarity to try first and why', () => {
    expect(polarityWords(withReason('outOfPhase', 'inverted'))).toBe(
      'Try inverted first: the fundamental arrives nearly upside down (+120° at 190 Hz).',
    );
    expect(polarityWords(withReason('between'))).toContain('A delay does more.');
    expect(polarityWords(withReason('unsureSide'))).toContain('Try normal first and listen');
    expect(tryWords(withReason('oppositeSides', 'inverted'))).toBe('Inverted first');
  });

  it('says what harm a pair does', () => {
    const ripple = { peak: 2.5, dip: -3.5, peakToDip: 6 };
    expect(harmOf({ ripple, harms: true })).toBe('ripples 6.0 dB');
    expect(harmOf({ ripple, harms: false })).toBe('no notch below 20 kHz');
    const endless = { ...ripple, peakToDip: Number.POSITIVE_INFINITY };
    expect(harmOf({ ripple: endless, harms: true })).toBe('cancels at the nulls');
    expect(originAirWords('Quay stage', { temperature: 31, humidity: 65 })).toBe(
      'Last venue, Quay stage: 31.0 °C and 65 %.',
    );
  });

  it('says a ripple without end in words', () => {
    expect(rippleWords({ peak: 2.5, dip: -3.5, peakToDip: 6 })).toBe(
      '6.0 dB peak to dip (+2.5 to −3.5 dB)',
    );
    const endless = { dip: Number.NEGATIVE_INFINITY, peakToDip: Number.POSITIVE_INFINITY };
    expect(rippleWords({ peak: 6.02, ...endless })).toBe(
      'full cancellation at the nulls (+6.0 dB at peaks)',
    );
  });

  it('delays the close mic, or says that the overhead would have to be', () => {
    const alignment = first(sound.timing.alignments);
    const delay = { ms: 2.1, samples48: 100.8, samples96: 201.6 };
    expect(alignmentWords({ ...alignment, delay, rest: 0 }, kit, 'mm')).toBe(
      `Delay ${nameOf(kit, alignment.mic)} by 2.10 ms, 101 samples at 48 kHz, 202 at 96 kHz, to meet ${nameOf(kit, alignment.overhead)}.`,
    );
    const early = { ms: -2.1, samples48: -100.8, samples96: -201.6 };
    expect(alignmentWords({ ...alignment, delay: early, rest: 240 }, kit, 'mm')).toMatch(
      /hears it first.*2\.10 ms.*240 mm off\.$/,
    );
  });

  it('says what another venue’s air changes', () => {
    const [cold, warm] = [
      { temperature: 0, humidity: 50 },
      { temperature: 20, humidity: 50 },
    ];
    // 343.2 sqrt(273.15 / 293.15) = 331.3 m/s by ISO 9613-1.
    expect(airChangeWords(airChange(sound, cold, warm))).toMatch(
      /^From 331\.3 to 343\.2 m\/s\. .*changes by −\d\.\d{3} ms/,
    );
    // A pair whose second mic hears first gets shorter in warmer air too.
    const turned = {
      ...sound,
      timing: {
        ...sound.timing,
        rows: sound.timing.rows.map((one) => ({ ...one, pathDifference: -one.pathDifference })),
      },
    };
    expect(airChangeWords(airChange(turned, cold, warm))).toContain('changes by −');
    expect(airChangeWords(airChange(sound, warm, warm))).toContain('nothing changes');
    expect(airWords(sound)).toMatch(/sound travels \d+\.\d m\/s/);
  });
});
