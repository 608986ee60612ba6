import { changePatch } from '../../layout/edit/patch.ts';
import type { Layout } from '../../layout/layout.ts';
import { channelSchema } from '../../layout/patch.ts';
import { type ChannelChange, changeChannel } from '../../patch/channels/editChannels.ts';
import type { InputRow } from '../../patch/inputList.ts';
import { CheckField } from '../fields/CheckField.tsx';
import { DECIBELS, HERTZ } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { chosenOf, INSERT_OPTIONS } from './patchChoices.ts';
import { editPatch, useFestivalMics } from './usePatch.ts';

const { highPass: highPassField, pad: padField } = channelSchema.shape;

/** What can be set on a channel. */
export function ChannelFields({ row }: { readonly row: InputRow }) {
  const mics = useFestivalMics();
  const { id, name, phantom, polarity, highPass, highPassRange, pad, insert, notes } = row;
  const applied = (layout: Layout, change: ChannelChange) =>
    changePatch(layout, (from) => changeChannel(from, mics, id, change));
  const set = (label: string, change: ChannelChange) =>
    editPatch(`${name}: ${label}`, (from) => changeChannel(from, mics, id, change));
  const byHand = [phantom, polarity, highPass, pad, insert].some((value) => value.byHand);
  return (
    <div className="line-more channel-fields">
      <CheckField
        label="48 V"
        checked={phantom.value}
        onSet={(on) => set('48 V', { phantom: on })}
      />
      <CheckField
        label="Polarity reversed"
        checked={polarity.value === 'reversed'}
        onSet={(on) => set('polarity', { polarity: on ? 'reversed' : 'normal' })}
      />
      <NumberField
        label="High-pass"
        step={`${name}: high-pass`}
        value={highPass.value ?? 0}
        measure={{ ...HERTZ, step: () => 5 }}
        limits={limitsOf(highPassField.unwrap())}
        apply={(layout, value) => applied(layout, { highPass: value })}
      />
      {highPassRange && (
        <p className="field-hint">
          0 is off. Usual here: {Math.round(highPassRange.low)} to {Math.round(highPassRange.high)}{' '}
          Hz.
        </p>
      )}
      <NumberField
        label="Pad"
        step={`${name}: pad`}
        value={pad.value}
        measure={DECIBELS}
        limits={limitsOf(padField.unwrap())}
        apply={(layout, value) => applied(layout, { pad: value })}
      />
      <SelectField
        label="Insert"
        value={insert.value}
        options={INSERT_OPTIONS}
        onChoose={(value) => set('insert', { insert: chosenOf(INSERT_OPTIONS, value) ?? null })}
      />
      <TextField
        label="Notes"
        value={notes}
        most={200}
        mayBeEmpty
        onSet={(text) => set('notes', { notes: text })}
      />
      {byHand && (
        <button
          type="button"
          onClick={() =>
            set('as usual', {
              phantom: null,
              polarity: null,
              highPass: null,
              pad: null,
              insert: null,
            })
          }
        >
          All as usual
        </button>
      )}
    </div>
  );
}
