import type { InputRow } from '../../patch/inputList.ts';
import { INSERT_OPTIONS } from './patchChoices.ts';

/** A channel's settings: `48 V`, `polarity reversed`, `high-pass 120 Hz`, `gate`. None but the notes, the last, is to be broken into lines. */
export function rowWords(row: InputRow): readonly string[] {
  const { phantom, polarity, highPass, pad, insert, split, notes, micClass } = row;
  const inserted = INSERT_OPTIONS.find(({ value }) => value === insert.value)?.text ?? '';
  return [
    micClass.name,
    phantom.value ? '48 V' : 'no 48 V',
    ...(polarity.value === 'reversed' ? ['polarity reversed'] : []),
    highPass.value ? `high-pass ${highPass.value} Hz` : 'no high-pass',
    ...(pad.value > 0 ? [`pad ${pad.value} dB`] : []),
    ...(insert.value === 'none' ? [] : [inserted.toLowerCase()]),
    ...(split === null ? [] : ['split']),
    ...(notes === '' ? [] : [notes]),
  ];
}
