import type { Layout } from '../../../layout/layout.ts';
import type { Venue } from '../../../layout/venue.ts';
import type { AirChange, AlignmentRow, Sound, TimingRow } from '../../../report/sound.ts';
import { type LengthUnit, showLength } from '../../../units/lengthText.ts';
import { nameOf } from '../../words/nameOf.ts';
import {
  differenceWords,
  figure,
  hertzWords,
  msWords,
  samplesWords,
  signedFigure,
} from './amounts.ts';

/** `Snare top and Overhead left, by the snare`. */
export const rowTitle = ({ first, second, source }: TimingRow, layout: Layout): string =>
  `${nameOf(layout, first)} and ${nameOf(layout, second)}, by ${nameOf(layout, source)}`;

/** Which hears first, by how much: `Overhead left is 620 mm and 1.81 ms later`. */
export function laterWords(
  { first, second, pathDifference, delay }: TimingRow,
  layout: Layout,
  unit: LengthUnit,
): string {
  if (Math.abs(pathDifference) < 0.5) return 'Both hear it at the same time.';
  const later = pathDifference > 0 ? second : first;
  return `${nameOf(layout, later)} is ${showLength(Math.abs(pathDifference), unit)} and ${msWords(Math.abs(delay.ms))} later.`;
}

/** `87 samples at 48 kHz, 174 at 96 kHz`. */
export const delaySamples = ({ samples48, samples96 }: TimingRow['delay']): string =>
  `${samplesWords(Math.abs(samples48))} samples at 48 kHz, ${samplesWords(Math.abs(samples96))} at 96 kHz`;

/** Which polarity to try first, and why. */
export function polarityWords({ polarity, phase, fundamental, start }: TimingRow): string {
  const first = polarity.tryFirst === 'inverted' ? 'Try inverted first' : 'Try normal first';
  const turned =
    phase === null || fundamental === null
      ? ''
      : ` (${signedFigure(phase, 0)}° at ${hertzWords(fundamental)})`;
  switch (polarity.reason) {
    case 'inPhase':
      return `${first}: the fundamental arrives nearly in phase${turned}.`;
    case 'outOfPhase':
      return `${first}: the fundamental arrives nearly upside down${turned}.`;
    case 'between':
      return `${first}, but neither helps much: the fundamental is between${turned}. A delay does more.`;
    case 'sameSide':
      return `${first}: both are on the same side of what is struck.`;
    case 'oppositeSides':
      return `${first}: they are on opposite sides of what is struck.`;
    case 'unsureSide':
      return `${first} and listen: from beside it, ${start === 'equal' ? 'a same' : 'an opposite'} start is not certain${turned}.`;
  }
}

/** `285 Hz, 855 Hz, 1.43 kHz`, or none. */
export const nullsWords = (nulls: readonly number[]): string =>
  nulls.length === 0 ? 'none' : nulls.map(hertzWords).join(', ');

/** Peak to dip of two copies; without end for equal ones. */
export const rippleWords = ({ peak, dip }: TimingRow['ripple']): string =>
  Number.isFinite(dip)
    ? `${differenceWords(peak - dip)} peak to dip (${signedFigure(peak, 1)} to ${figure(dip, 1)} dB)`
    : `full cancellation at the nulls (${signedFigure(peak, 1)} dB at peaks)`;

/** The delay that lines a close mic up. */
export function alignmentWords(
  { mic, overhead, delay, rest }: AlignmentRow,
  layout: Layout,
  unit: LengthUnit,
): string {
  const near = nameOf(layout, overhead);
  const amount = `${msWords(Math.abs(delay.ms))}, ${delaySamples(delay)}`;
  const others = rest < 1 ? '' : ` Another overhead is then up to ${showLength(rest, unit)} off.`;
  return delay.ms >= 0
    ? `Delay ${nameOf(layout, mic)} by ${amount}, to meet ${near}.${others}`
    : `${near} hears it first: it would have to be delayed by ${amount}.${others}`;
}

/** The air that every delay is computed by, with what is left out. */
export const airWords = ({ air }: Pick<Sound, 'air'>): string =>
  `${figure(air.temperature, 1)} °C and ${figure(air.humidity, 0)} %: sound travels ${figure(air.speed, 1)} m/s by temperature, ${figure(air.humidSpeed, 1)} m/s with humidity${air.humidSpeedIsValid ? '' : ' (outside the 0 to 30 °C it is stated for)'}. Air takes ${differenceWords(air.lossLeftOut)} at 8 kHz over 3 m, left out.`;

/** What the other air does to the longest delay. */
export function airChangeWords({ from, to, rows }: AirChange): string {
  if (from.temperature === to.temperature && from.humidity === to.humidity) {
    return 'The same air as at the last venue: nothing changes.';
  }
  const speeds = `From ${figure(from.speed, 1)} to ${figure(to.speed, 1)} m/s`;
  const [most] = rows.toSorted(
    (p, q) => Math.abs(q.byTemperature.change) - Math.abs(p.byTemperature.change),
  );
  if (!most) return `${speeds}. No pair is timed.`;
  const { byTemperature, withHumidity } = most;
  // A delay below 0 counts the other way round: longer is longer.
  const sign = byTemperature.before < 0 ? -1 : 1;
  const [ms, samples48, samples96, humid] = [
    signedFigure(sign * byTemperature.change, 3),
    signedFigure(sign * byTemperature.samples48, 1),
    signedFigure(sign * byTemperature.samples96, 1),
    signedFigure(sign * withHumidity.change, 3),
  ];
  return `${speeds}. The longest delay changes by ${ms} ms (${samples48} samples at 48 kHz, ${samples96} at 96 kHz); with humidity by ${humid} ms.`;
}

/** Which polarity to try first, in a few words. */
export const tryWords = ({ polarity }: TimingRow): string =>
  polarity.tryFirst === 'inverted' ? 'Inverted first' : 'Normal first';

/** The last venue's air, as the layout that this one was started from says it. */
export const originAirWords = (
  name: string,
  { temperature, humidity }: Pick<Venue, 'temperature' | 'humidity'>,
): string => `Last venue, ${name}: ${figure(temperature, 1)} °C and ${figure(humidity, 0)} %.`;

/** What a pair does when both mics are mixed alike: `6.2 dB peak to dip`. */
export const harmOf = ({ ripple, harms }: Pick<TimingRow, 'ripple' | 'harms'>): string => {
  if (!harms) return 'no notch below 20 kHz';
  return Number.isFinite(ripple.peakToDip)
    ? `ripples ${differenceWords(ripple.peakToDip)}`
    : 'cancels at the nulls';
};
