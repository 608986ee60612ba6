import type { InputRow } from '../../patch/inputList.ts';
import { INSERT_OPTIONS } from './patchChoices.ts';

/** One of a channel's settings, told apart from the others by what it is of: notes and classes of mics are named by their users, as a setting if they like. */
export interface RowWord {
  readonly of: 'class' | 'phantom' | 'polarity' | 'highPass' | 'pad' | 'insert' | 'split' | 'notes';
  readonly text: string;
}

/** A channel's settings: `48 V`, `polarity reversed`, `high-pass 120 Hz`, `gate`. None but the notes, the last, is to be broken into lines. */
export function rowWords(row: InputRow): readonly RowWord[] {
  const { phantom, polarity, highPass, pad, insert, split, notes, micClass } = row;
  const inserted = INSERT_OPTIONS.find(({ value }) => value === insert.value)?.text ?? '';
  const all: readonly RowWord[] = [
    { of: 'class', text: micClass.name },
    { of: 'phantom', text: phantom.value ? '48 V' : 'no 48 V' },
    { of: 'polarity', text: polarity.value === 'reversed' ? 'polarity reversed' : '' },
    { of: 'highPass', text: highPass.value ? `high-pass ${highPass.value} Hz` : 'no high-pass' },
    { of: 'pad', text: pad.value > 0 ? `pad ${pad.value} dB` : '' },
    { of: 'insert', text: insert.value === 'none' ? '' : inserted.toLowerCase() },
    { of: 'split', text: split === null ? '' : 'split' },
    { of: 'notes', text: notes },
  ];
  return all.filter(({ text }) => text !== '');
}
